import { saveBlob } from "../elements/saveText.ts";

/** Pixels of the file to one of the drawing: sharp on paper too. */
const scale = 2;

/** Hands a drawing to the reader as a PNG file: painted in the browser, on the drawing's own ground. */
export async function savePng(svg: string, name: string): Promise<void> {
  const source = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  try {
    const image = new Image();
    image.src = source;
    await image.decode();
    const canvas = document.createElement("canvas");
    canvas.width = Math.ceil(image.naturalWidth * scale);
    canvas.height = Math.ceil(image.naturalHeight * scale);
    canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/png"));
    if (blob === null) throw new Error("The browser could not make a picture of it. Save it as SVG.");
    saveBlob(blob, name);
  } finally {
    URL.revokeObjectURL(source);
  }
}
