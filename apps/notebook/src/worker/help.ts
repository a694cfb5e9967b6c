import type { Plan } from "@leeway/core";
import type { HelpedBlock, HelpWanted } from "./helpMessages.ts";

/** Somebody who computes blocks of the same plan from the last one down. */
export interface Help {
  begin(plan: Plan): void;
  /** Blocks of this plan that have arrived since it was asked last. */
  taken(): HelpedBlock[];
  /** No more is needed. */
  end(): void;
}

/** A helper as far as this needs it; tests hand in their own. */
export interface HelperLike {
  postMessage(wanted: HelpWanted): void;
  onmessage: ((event: MessageEvent<HelpedBlock>) => void) | null;
}

export function createHelp(helper: HelperLike): Help {
  let turn = 0;
  let arrived: HelpedBlock[] = [];
  helper.onmessage = ({ data }) => {
    if (data.turn === turn) arrived.push(data);
  };
  return {
    begin(plan) {
      arrived = [];
      helper.postMessage({ turn: ++turn, plan });
    },
    taken() {
      const blocks = arrived;
      arrived = [];
      return blocks;
    },
    end() {
      arrived = [];
      helper.postMessage({ turn: ++turn });
    },
  };
}
