import type { CDPSession, Page } from "playwright-core";

export declare function randomEdit(page: Page, n: number): Promise<number>;
export declare function heapOf(session: CDPSession): Promise<number>;
export declare function slopeOf(values: readonly number[]): number;
