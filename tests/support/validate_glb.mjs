// Checks glTF files with the validator package of the format's publisher.
// Usage: TANKWRIGHT_NODE_MODULES=<folder with gltf-validator> node validate_glb.mjs FILE...
// Exit: 0 no error and no warning, 1 some (each on a line), 3 the package is not there.
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import process from 'node:process';

const beside = path.resolve(import.meta.dirname ?? path.dirname(new URL(import.meta.url).pathname), '..', 'node_modules');
const folder = process.env.TANKWRIGHT_NODE_MODULES ?? beside;

function load() {
  try {
    return createRequire(path.join(path.resolve(folder), 'x.js'))(path.join(path.resolve(folder), 'gltf-validator'));
  } catch {
    console.log('no validator');
    process.exit(3);
  }
}

const validator = load();
let bad = 0;
for (const file of process.argv.slice(2)) {
  const report = await validator.validateBytes(new Uint8Array(await readFile(file)), { maxIssues: 100 });
  const { numErrors, numWarnings, numInfos, numHints, messages } = report.issues;
  console.log(`${path.basename(file)}: ${numErrors} errors, ${numWarnings} warnings, ${numInfos} infos, ${numHints} hints`);
  for (const m of messages.slice(0, 10)) console.log(`  ${m.code} ${m.pointer ?? ''} ${m.message}`);
  bad += numErrors + numWarnings;
}
process.exit(bad > 0 ? 1 : 0);
