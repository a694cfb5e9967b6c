import type { FromThread, ToThread } from "./messages.ts";

/** What a thread tells whoever started it. */
export interface Listener {
  message(message: FromThread): void;
  /** It broke or ended by itself; nothing more will come. */
  lost(error: Error): void;
}

/** One thread, of Node or of a page. */
export interface Thread {
  post(message: ToThread, transfer: ArrayBuffer[]): void;
  /** Ends it at once, whatever it is doing; resolves when it is gone. */
  end(): Promise<void>;
  /** A resting thread does not keep the program running. */
  rest(resting: boolean): void;
}

/** Starts a thread. May throw, or report `lost` before the thread's first message: then there is none to be had. */
export type StartThread = (listener: Listener) => Thread;
