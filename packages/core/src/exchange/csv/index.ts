export { type CsvReading, type Delimiter, LARGEST_TABLE, readCsv } from "./readCsv.ts";
export { type CsvCell, type CsvWriting, writeCsv } from "./writeCsv.ts";
