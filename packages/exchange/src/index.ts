export { marksCsv } from './marksCsv';
export { parseReadingTable } from './readingTable/parseReadingTable';
export type {
  ReadingRow,
  ReadingTable,
  TableColumn,
  TableProblem,
} from './readingTable/readingTable';
export { type DerivedReport, derivedReport } from './report/derivedReport';
export { setOutCsv } from './setOutCsv';
export { siteFileName } from './siteFileName';
