// The thread that reads: TypeScript is only understood in it once that was registered.
import { register } from 'tsx/esm/api';

register();
await import('./fuzzThread.ts');
