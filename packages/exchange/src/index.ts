export { marksCsv } from './marksCsv';
export { type DerivedReport, derivedReport } from './report/derivedReport';
export { siteFileName } from './siteFileName';
