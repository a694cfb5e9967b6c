import { warmUp } from "@leeway/core";
import { breathe } from "./breathe.ts";
import { helpDesk } from "./helpDesk.ts";
import type { HelpWanted } from "./helpMessages.ts";

const take = helpDesk({
  post: (block) => self.postMessage(block, { transfer: [block.rows.buffer] }),
  breathe,
});
self.addEventListener("message", (event: MessageEvent<HelpWanted>) => take(event.data));
warmUp();
