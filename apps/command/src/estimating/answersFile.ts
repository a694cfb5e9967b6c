import {
  INTERVIEW_ORDER,
  type InterviewSubject,
  type Opinion,
  opinionFrom,
  type Problem,
} from "@leeway/core";
import { callProblem } from "../call/callProblem.ts";
import { readDocument } from "../files/readDocument.ts";

const KEYS: readonly string[] = INTERVIEW_ORDER;

/**
 * An opinion from a JSON file `{ "basis": "...", "high": 9, "low": 3, "likely": 5, "dissent": "..." }`, or everything
 * that is wrong with it.
 */
export async function answersFromFile(
  subject: InterviewSubject,
  path: string,
): Promise<{ opinion?: Opinion; problems: Problem[] }> {
  const problem = (where: string, rule: string, remedy: string) =>
    callProblem("answer", `${path}${where}`, rule, remedy);
  const document = await readDocument(path);
  if (document.text === undefined) {
    const { rule = "It could not be read.", remedy = "Check the path." } = document.problem ?? {};
    return { problems: [problem("", rule, remedy)] };
  }
  const given = objectIn(document.text);
  if (given === undefined) {
    const remedy = `Write { "basis": "...", "high": 9, "low": 3, "likely": 5, "dissent": "..." }.`;
    return { problems: [problem("", "That is not a JSON object with the answers.", remedy)] };
  }
  const problems: Problem[] = [];
  const answers: Record<string, string> = {};
  for (const [key, value] of Object.entries(given)) {
    const number = typeof value === "number" && Number.isFinite(value);
    if (!KEYS.includes(key))
      problems.push(problem(` ${key}`, "There is no such question.", `Questions: ${KEYS.join(", ")}.`));
    else if (typeof value === "string" || number) answers[key] = String(value);
    else problems.push(problem(` ${key}`, "An answer is a text or a number.", "Write it so."));
  }
  const { opinion, faults } = opinionFrom(subject, answers);
  const unread = new Set(Object.keys(given).filter((key) => !(key in answers)));
  const others = faults.filter(({ key }) => !unread.has(key));
  problems.push(...others.map(({ key, why }) => problem(` ${key}`, why, "Correct it in the file.")));
  return opinion === undefined || problems.length > 0 ? { problems } : { opinion, problems };
}

function objectIn(text: string): object | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null && !Array.isArray(value) ? value : undefined;
  } catch {
    return undefined;
  }
}
