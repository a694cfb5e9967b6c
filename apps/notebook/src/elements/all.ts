// Defines every element of the page.
import "./leewayAnswer.ts";
import "./leewayBar.ts";
import "./leewayCommitment.ts";
import "./leewayFigure.ts";
import "./leewayOutline.ts";
import "./leewayPlanText.ts";
import "./leewayRegister.ts";
import "./leewayStamp.ts";
import "./leewayTasks.ts";
import "./leewayTornado.ts";

export { LeewayPage } from "./leewayPage.ts";
