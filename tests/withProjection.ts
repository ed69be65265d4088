// Tests derive sites with coordinates like all others: the library that the app brings for them is here from the start. Read past
// the package's index, or every test file would read the whole package first.
import { loadProjection } from '../packages/site/src/frame/projection';

await loadProjection();
