import type { Brief } from "@leeway/core";
import { designWords } from "../../words/designWords.ts";
import { formatDate } from "../../words/formatDate.ts";
import { groupDigits } from "../../words/groupDigits.ts";
import { plainName } from "../../words/plainName.ts";
import { quiet, sentence } from "../sheet/build.ts";
import type { Section } from "../sheet/types.ts";

const caution =
  "These figures restate what people judged. Where money, contracts or safety depend on them, your own rules and competent people decide.";

/** What is needed to get the same figures again, and the usual caution. */
export function runSection({ stamp, plan, today, warnings }: Brief): Section {
  const [warning] = warnings;
  const status =
    plan.statusDate === undefined ? "no progress yet" : `status ${formatDate(plan.statusDate, "short")}`;
  const futures = `${groupDigits(stamp.iterations)} ${stamp.iterations === 1 ? "future" : "futures"}`;
  return {
    key: "run",
    title: "Run and caution",
    blocks: [
      quiet(caution),
      ...(warning === undefined
        ? []
        : [
            quiet(
              `Warning: ${sentence(warning, 240)}${warnings.length > 1 ? ` And ${warnings.length - 1} more: see the forecast.` : ""}`,
            ),
          ]),
      quiet(
        `Run: seed ${plainName(stamp.seed, 40)}, ${futures}, ${designWords(stamp.design)}, plan ${stamp.sha256.slice(0, 12)}, ${status}, engine ${stamp.version}; written ${formatDate(today, "short")}.`,
      ),
    ],
  };
}
