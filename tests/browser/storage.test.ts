import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { temporaryFolder } from "../support/temporaryFolder.ts";
import { fillPlan } from "./support/fillPlan.ts";
import { killed } from "./support/killed.ts";
import { cell, type Notebook, settled } from "./support/notebook.ts";
import { servedPage } from "./support/servedPage.ts";

const strip = "Strip the old roof: high, in working days";
const shed = (high: number) => `format: 1
title: Shed roof
start: 2027-02-01
iterations: 200
tasks:
  - { id: strip, name: Strip the old roof, duration: [2, 3, ${high}] }
`;

// Nothing a reader typed is lost while the page is open, whatever the browser does with its storage, and the reader is
// told in words: the project's own rules, common practice, no source. Errors by name: Indexed Database API 3.0 (W3C),
// File System Standard and Storage Standard (WHATWG), recalled from memory.
describe("the storage is taken away", () => {
  const served = servedPage();

  /** The shed, kept in this browser. */
  async function keptShed(init?: () => void): Promise<Notebook> {
    const notebook = await served.open({ acceptDownloads: true }, init);
    await fillPlan(notebook.page, shed(6));
    return notebook;
  }
  const enter = async (page: Page, text: string): Promise<void> => {
    await cell(page, strip).fill(text);
    await cell(page, strip).press("Enter");
    await settled(page);
  };
  const kept = (page: Page) => page.locator("#safety", { hasText: /^\s*Kept in this browser/ }).waitFor();
  async function downloaded(page: Page): Promise<string> {
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Download the plan" }).first().click(),
    ]);
    return readFileSync(await download.path(), "utf8");
  }

  it("full: says so, offers the download, and keeps the plan once there is room", async () => {
    const { page, close } = await served.open();
    const session = await page.context().newCDPSession(page);
    const { origin } = new URL(served.built.address);
    // Before anything is kept: Chromium lets small changes pass for a while after it last looked at the room.
    await session.send("Storage.overrideQuotaForOrigin", { origin, quotaSize: 1 });
    await page.locator("#plan-text").fill(shed(8));
    await page.locator("[role=alert]", { hasText: "no room left" }).waitFor();
    await settled(page);
    expect(await downloaded(page)).toBe(shed(8));
    await session.send("Storage.overrideQuotaForOrigin", { origin });
    await kept(page);
    await page.reload();
    await settled(page);
    expect(await page.locator("#plan-text").inputValue()).toBe(shed(8));
    await close();
  });

  it.each(["deleted by another page", "cleared by the browser"])(
    "%s: keeps the plan anew and says so",
    async (how) => {
      const { page, close } = await keptShed();
      await kept(page);
      if (how === "deleted by another page") {
        const other = await page.context().newPage();
        await other.goto(new URL("mark.svg", served.built.address).href);
        await other.evaluate(
          () =>
            new Promise((resolve, reject) => {
              const request = indexedDB.deleteDatabase("leeway");
              request.onsuccess = resolve;
              request.onerror = reject;
            }),
        );
        await other.close();
      } else {
        const session = await page.context().newCDPSession(page);
        await session.send("Storage.clearDataForOrigin", {
          origin: new URL(served.built.address).origin,
          storageTypes: "all",
        });
      }
      await page.locator(".file-told", { hasText: "was deleted" }).waitFor();
      await kept(page);
      await enter(page, "9");
      await kept(page);
      await page.reload();
      await settled(page);
      expect(await page.locator("#plan-text").inputValue()).toBe(shed(9));
      await close();
    },
  );

  it("refused altogether: says so, offers the download, and the browser asks before it closes", async () => {
    const { page, close } = await keptShed(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException("no storage here", "SecurityError");
      };
    });
    await page.locator("[role=alert]", { hasText: "does not let the page keep anything" }).waitFor();
    await enter(page, "7");
    const asked = page.waitForEvent("dialog");
    await page.close({ runBeforeUnload: true });
    const dialog = await asked;
    expect(dialog.type()).toBe("beforeunload");
    await dialog.dismiss();
    expect(await downloaded(page)).toBe(shed(7));
    // Now a file has it: nothing is at risk any more.
    await page.locator("[role=alert]").waitFor({ state: "detached" });
    await close();
  });

  it("a file that was deleted, or may not be written any more: says which, and offers the download", async () => {
    const { page, close } = await keptShed();
    // A file of the browser's own file system, handed out as if the reader had picked it.
    await page.evaluate(() => {
      Reflect.set(window, "showSaveFilePicker", async () =>
        (await navigator.storage.getDirectory()).getFileHandle("shed.plan.yaml", { create: true }),
      );
    });
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.locator(".file-told", { hasText: "Saved to shed.plan.yaml" }).waitFor();
    await page.evaluate(() => {
      Reflect.set(FileSystemFileHandle.prototype, "createWritable", async () => {
        throw new DOMException("gone", "NotFoundError");
      });
    });
    await enter(page, "8");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.locator(".file-told", { hasText: "shed.plan.yaml was moved or deleted" }).waitFor();
    expect(await downloaded(page)).toBe(shed(8));
    await page.evaluate(() => {
      Reflect.set(FileSystemFileHandle.prototype, "requestPermission", async () => "denied");
    });
    await enter(page, "9");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    await page.locator(".file-told", { hasText: "may not be written to by this page any more" }).waitFor();
    expect(await downloaded(page)).toBe(shed(9));
    await kept(page);
    await close();
  });

  // A transaction that was completed is there after the process died (Indexed Database API 3.0, 2.7.1). How old
  // what is lost may be (less than a second) is in `ages`, to be judged by hand: no test depends on the time of day.
  it("killed in the middle of keeping, again and again: the last plan is whole, and nothing that was kept is missing", async () => {
    const { lost, torn, ages } = await killed(
      served.built.address,
      temporaryFolder(),
      Number(process.env.LEEWAY_KILLS ?? 20),
    );
    console.log(
      `killed: what was missing had been typed ${ages.map((age) => `${age} ms`).join(", ") || "never"} before`,
    );
    expect({ lost, torn }).toEqual({ lost: [], torn: [] });
  }, 1_200_000);
});
