import { breathe } from "./breathe.ts";
import type { Leave, Request } from "./messages.ts";
import { tornadoDesk } from "./tornadoDesk.ts";

const take = tornadoDesk((reply) => self.postMessage(reply), breathe);
self.addEventListener("message", (event: MessageEvent<Request | Leave>) => take(event.data));
