/** The two functions used. The published types bring those of Node with them, and the core knows no Node. */
declare module "papaparse" {
  interface ParseError {
    message: string;
    row?: number;
  }
  const Papa: {
    parse<Row>(
      text: string,
      config: { delimiter: string; newline: string },
    ): { data: Row[]; errors: ParseError[] };
    unparse(
      rows: readonly (readonly unknown[])[],
      config: { newline: string; quotes: (value: unknown) => boolean; skipEmptyLines: boolean },
    ): string;
  };
  export default Papa;
}
