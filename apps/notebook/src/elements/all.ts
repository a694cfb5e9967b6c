// Defines every element of the page.
import "../beginning/leewayBegin.ts";
import "../handing/leewayHandOver.ts";
import "./leewayAnswer.ts";
import "./leewayBar.ts";
import "./leewayChanges.ts";
import "./leewayCommitment.ts";
import "./leewayContingency.ts";
import "./leewayFigure.ts";
import "./leewayFile.ts";
import "./leewayFindings.ts";
import "./leewayFutures.ts";
import "./leewayLevel.ts";
import "./leewayLevelCurve.ts";
import "./leewayMoney.ts";
import "./leewayOneFuture.ts";
import "./leewayOutline.ts";
import "./leewayPeople.ts";
import "./leewayPlanText.ts";
import "./leewayPurpose.ts";
import "./leewayReach.ts";
import "./leewayRegister.ts";
import "./leewayStamp.ts";
import "./leewaySuggest.ts";
import "./leewayTasks.ts";
import "./leewayTornado.ts";
import "./leewayWorth.ts";

export { LeewayPage } from "./leewayPage.ts";
