import { saveText } from "../elements/saveText.ts";
import { unwrittenWords } from "./troubleWords.ts";

/** Files larger than this are no plan a person wrote. */
const largest = 20_000_000;

export interface OpenedFile {
  name: string;
  text: string;
  /** Where the browser can write back to the same file. */
  handle?: FileSystemFileHandle;
}

const kinds = [
  { description: "Plan", accept: { "application/yaml": [".yaml", ".yml"], "application/json": [".json"] } },
] satisfies FilePickerAcceptType[];

interface FilePickerAcceptType {
  description: string;
  accept: Record<string, string[]>;
}
/** What some browsers have and the standard types do not name yet. */
interface Pickers {
  showOpenFilePicker?(options: { types: FilePickerAcceptType[] }): Promise<FileSystemFileHandle[]>;
  showSaveFilePicker?(options: {
    types: FilePickerAcceptType[];
    suggestedName: string;
  }): Promise<FileSystemFileHandle>;
}
interface Permitting {
  requestPermission?(options: { mode: "readwrite" }): Promise<PermissionState>;
}
const pickers = (): Pickers => window as unknown as Pickers;

/** Asks the reader for a file. Undefined: the reader thought better of it. Throws an error whose message is for the reader. */
export async function pickFile(): Promise<OpenedFile | undefined> {
  const { showOpenFilePicker } = pickers();
  if (showOpenFilePicker === undefined) return pickByInput();
  try {
    const [handle] = await showOpenFilePicker.call(window, { types: kinds });
    return handle === undefined ? undefined : { ...(await readFile(await handle.getFile())), handle };
  } catch (error) {
    if (isAborted(error)) return undefined;
    throw error;
  }
}

function pickByInput(): Promise<OpenedFile | undefined> {
  return new Promise((resolve, reject) => {
    const input = document.createElement("input");
    input.type = "file";
    input.accept = ".yaml,.yml,.json";
    input.addEventListener("cancel", () => resolve(undefined));
    input.addEventListener("change", () => {
      const [file] = input.files ?? [];
      if (file === undefined) resolve(undefined);
      else readFile(file).then(resolve, reject);
    });
    input.click();
  });
}

/** The text of a file. Throws, in words, where it is too large or no UTF-8 text. */
export async function readFile(file: File): Promise<OpenedFile> {
  if (file.size > largest)
    throw new Error(`${file.name} has ${Math.round(file.size / 1e6)} MB; a plan has at most 20 MB.`);
  const bytes = await file.arrayBuffer();
  try {
    return { name: file.name, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    throw new Error(`${file.name} is no UTF-8 text. Save it as UTF-8 in the editor it comes from.`);
  }
}

/**
 * Writes the text to the file it came from, to one the reader picks, or, where the browser has neither, hands it over
 * as a download.
 *
 * @returns the handle written to, `undefined` after a download; `"not saved"` when the reader thought better of it.
 * Throws an error whose message is for the reader.
 */
export async function writeFile(
  text: string,
  name: string,
  known: FileSystemFileHandle | undefined,
): Promise<FileSystemFileHandle | undefined | "not saved"> {
  const { showSaveFilePicker } = pickers();
  let handle = known;
  try {
    if (showSaveFilePicker !== undefined)
      handle ??= await showSaveFilePicker.call(window, { types: kinds, suggestedName: name });
    if (handle === undefined) {
      download(text, name);
      return undefined;
    }
    if ((await (handle as Permitting).requestPermission?.({ mode: "readwrite" })) === "denied")
      throw new DOMException("denied", "NotAllowedError");
    // The browser writes to a copy and swaps it in when the stream is closed: the file is never half-written.
    const stream = await handle.createWritable();
    await stream.write(text);
    await stream.close();
    return handle;
  } catch (error) {
    if (isAborted(error)) return "not saved";
    throw new Error(unwrittenWords(error, handle?.name ?? name));
  }
}

/** Hands the text to the reader's downloads: what is left when nothing else can be written. */
export function download(text: string, name: string): void {
  saveText(text, "application/yaml", name);
}

function isAborted(error: unknown): boolean {
  return error instanceof DOMException && error.name === "AbortError";
}

/** A file name from a plan's title. */
export function nameFrom(title: string | undefined): string {
  const words = (title ?? "plan").toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? ["plan"];
  return `${words.slice(0, 4).join("-")}.plan.yaml`;
}
