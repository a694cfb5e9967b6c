import { timingSafeEqual } from "node:crypto";
import type { IncomingMessage } from "node:http";

export interface Refusal {
  status: 400 | 403 | 404 | 405 | 411 | 413 | 415 | 421;
  text: string;
}

/** A plan of more bytes than this is none a person wrote. */
export const largestPlan = 20_000_000;

/**
 * Whether a request may be answered at all. The server listens on loopback alone, and still any page open in the
 * reader's browser could try it: so the host must be loopback by name (a name that was made to point here is another
 * one: DNS rebinding), a foreign origin is refused, and the path begins with a token nobody else knows.
 *
 * @returns the path after the token, or why not.
 */
export function admitted(request: IncomingMessage, port: number, token: string): Refusal | { path: string } {
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  const { host, origin } = request.headers;
  if (host === undefined || !hosts.includes(host.toLowerCase()))
    return { status: 421, text: "This server answers to 127.0.0.1 only." };
  if (origin !== undefined && !hosts.some((one) => origin === `http://${one}`))
    return { status: 403, text: "This server answers its own page only." };
  const site = request.headers["sec-fetch-site"];
  if (site !== undefined && site !== "same-origin" && site !== "none")
    return { status: 403, text: "This server answers its own page only." };
  let path: string;
  try {
    path = decodeURIComponent(new URL(request.url ?? "/", "http://localhost").pathname);
  } catch {
    return { status: 400, text: "That is no address." };
  }
  const [, given = "", ...rest] = path.split("/");
  if (!same(given, token) || path.includes("\0"))
    return {
      status: 404,
      text: "There is nothing here. The address that `leeway open` printed is the only one.",
    };
  return { path: `/${rest.join("/")}` };
}

/** Why a body may not be taken as a plan, before it is read. */
export function bodyRefusal(request: IncomingMessage): Refusal | undefined {
  const { "content-length": length, "content-type": type = "" } = request.headers;
  if (!/^text\/plain(;|$)/.test(type)) return { status: 415, text: "A plan is sent as text/plain." };
  if (length === undefined) return { status: 411, text: "The length of the plan is missing." };
  if (!(Number(length) <= largestPlan))
    return { status: 413, text: `A plan has at most ${largestPlan / 1e6} MB.` };
  return undefined;
}

function same(a: string, b: string): boolean {
  const [left, right] = [Buffer.from(a), Buffer.from(b)];
  return left.length === right.length && timingSafeEqual(left, right);
}
