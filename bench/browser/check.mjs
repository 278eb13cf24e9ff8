// Works every table of outside values, and one next probe, in the core as a browser would have it.
import { readFileSync, readdirSync } from 'node:fs';
import { probeNext, worked } from './target/javascript/sillwright.mjs';

const root = new URL('../../core/src/test/resources/checks/', import.meta.url);
let rows = 0, misses = 0;
for (const stage of readdirSync(root)) {
  for (const name of readdirSync(new URL(stage + '/', root)).filter((file) => file.endsWith('.csv'))) {
    const [count, ...lines] = worked(readFileSync(new URL(stage + '/' + name, root), 'utf8')).split('\n');
    rows += Number(count);
    misses += lines.length;
    for (const line of lines) console.log(`${stage}/${name}: ${line}`);
  }
}
const at = performance.now();
const next = probeNext(140, 900, [60, 200, 400, 300, 100], [60, 30, 90, 60, 100], [55, 30, 0, 12, 40]);
console.log(next, `(${Math.round(performance.now() - at)} ms)`);
console.log(`${rows} outside values worked in the compiled core, ${misses} do not come out`);
process.exit(rows > 500 && misses === 0 && next.startsWith('Probe next') ? 0 : 1);
