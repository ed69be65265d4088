export type { DigFinding, DigSeverity } from './digFinding';
