import { createInterface } from "node:readline";
import { answerInterview, type Interview } from "@leeway/core";
import { questionText } from "../text/interviewText.ts";

export interface Channels {
  input: NodeJS.ReadableStream & { isTTY?: boolean };
  /** Where questions go: never standard output, which is the answer's. */
  output: NodeJS.WritableStream;
  width: number;
}

/**
 * Asks until the interview is done, one line an answer, on a terminal or from a pipe. Where the lines end before it is
 * done, the interview as it stands then.
 */
export async function askPerson(begun: Interview, { input, output, width }: Channels): Promise<Interview> {
  const terminal = input.isTTY === true;
  const lines = createInterface({ input, ...(terminal && { output, terminal: true }), crlfDelay: 1000 });
  lines.on("SIGINT", () => process.kill(process.pid, "SIGINT"));
  let interview = begun;
  const ask = () => {
    output.write(`${questionText(interview, width)}> `);
    if (!terminal) output.write("\n");
  };
  try {
    ask();
    for await (const line of lines) {
      interview = answerInterview(interview, line);
      if (interview.question === undefined) break;
      output.write("\n");
      ask();
    }
  } finally {
    lines.close();
    if (terminal && "pause" in input) input.pause();
  }
  return interview;
}
