// SPDX-License-Identifier: Apache-2.0
// node validate.js MODULES SCHEMA FOLDER
// Every FOLDER/*.json must be valid, and stop being so when it is altered.
'use strict';

const fs = require('fs');
const path = require('path');

const [modules, schemaPath, folder] = process.argv.slice(2);
const Ajv = require(path.join(modules, 'ajv'));
const schema = JSON.parse(fs.readFileSync(schemaPath, 'utf8'));
const validate = new Ajv({strict: true, strictRequired: false, allowUnionTypes: true}).compile(schema);

// Fields that nothing may leave out, wherever they stand; `*` is any place in a list.
const needed = [
  '/maslin', '/schema', '/command', '/exit', '/diagnostics',
  '/diagnostics/*/code', '/diagnostics/*/severity', '/diagnostics/*/message',
  '/diagnostics/*/because', '/diagnostics/*/mends', '/diagnostics/*/fixes',
  '/diagnostics/*/primary/file', '/diagnostics/*/primary/begin/line',
  '/diagnostics/*/primary/end/offset', '/diagnostics/*/fixes/*/edits',
  '/diagnostics/*/fixes/*/edits/*/text', '/plan/task', '/plan/task/basket', '/plan/task/aim/kind',
  '/plan/totals', '/plan/totals/prepared_g', '/plan/produce', '/plan/produce/*/weight_g',
  '/plan/produce/*/draws/*/place', '/plan/produce/*/draws/*/prepared_g',
  '/plan/additions/*/weight_g', '/plan/additions/*/tool', '/plan/additions/*/ingredient',
  '/plan/accounts/*/donor', '/plan/shares/*/share', '/plan/per_kilogram/*/slot',
  '/plan/limits/*/share/low', '/plan/limits/*/margin_share', '/plan/leftovers/*/prepared_g',
  '/plan/to_get/*/weight_g', '/plan/assumptions/*/kind', '/plan/not_computed/*/what',
  '/plan/cost/by_jar/*/contents', '/plan/cost/unpriced',
  '/plan/pungency/scoville_heat_units/low', '/plan/pectin/*/fruit', '/plan/keeping/routes/*/to_read',
  '/plan/keeping/figures/*/unfavourable_end', '/plan/keeping/ph/expected', '/plan/cautions', '/plan/limiting/*/kind', '/blend/supplies/*/ingredient',
  '/blend/statements/*/place', '/blend/columns/*/role', '/blend/rows/*/terms',
  '/blend/rows/*/terms/*/coefficient', '/blend/objectives/*/direction', '/check/frameworks',
  '/check/not_checked', '/explain/found', '/explain/ingredient/classes', '/explain/class/members',
  '/explain/framework/shares', '/explain/unit/name', '/explain/diagnostic/summary',
  '/labels/*/ingredients/*/emphasised', '/labels/*/record/from_plan',
  '/labels/*/lots/*/mark', '/labels/*/lots/*/jars/*/count', '/labels/*/nutrition/*/what',
  '/labels/*/allergen_card/*/in', '/labels/*/allergens_not_stated', '/labels/*/blanks/*/why', '/labels/*/notes',
  '/mended/files', '/usage/message',
];
const seen = new Map(needed.map((name) => [name, 0]));
const problems = [];
let altered = 0;

function mustFail(document, file, what) {
  altered += 1;
  if (validate(document)) problems.push(`${file}: still valid ${what}`);
}

function alter(document, node, place, general, file) {
  if (node === null || typeof node !== 'object') return;
  if (!Array.isArray(node)) {
    node.unheard_of = 'x';
    mustFail(document, file, `with a field more in ${place || '/'}`);
    delete node.unheard_of;
  }
  for (const key of Object.keys(node)) {
    const value = node[key];
    const here = `${place}/${key}`;
    const kind = Array.isArray(node) ? `${general}/*` : `${general}/${key}`;
    if (typeof value === 'number') {
      node[key] = String(value);
      mustFail(document, file, `with a text for ${here}`);
    } else if (typeof value === 'string') {
      node[key] = 1;
      mustFail(document, file, `with a number for ${here}`);
    }
    if (seen.has(kind)) {
      seen.set(kind, seen.get(kind) + 1);
      delete node[key];
      mustFail(document, file, `without ${here}`);
    }
    node[key] = value;
    alter(document, value, here, kind, file);
  }
}

const files = fs.readdirSync(folder).filter((name) => name.endsWith('.json')).sort();
for (const file of files) {
  const document = JSON.parse(fs.readFileSync(path.join(folder, file), 'utf8'));
  if (!validate(document)) {
    const first = validate.errors.map((error) => `${error.instancePath} ${error.message}`);
    problems.push(`${file}: ${first.join('; ')}`);
    continue;
  }
  alter(document, document, '', '', file);
}
for (const [name, count] of seen) {
  if (count === 0) problems.push(`no output has ${name}, so it was not tried`);
}
for (const problem of problems.slice(0, 50)) console.log(problem);
console.log(`${files.length} outputs, ${altered} alterations, ${problems.length} problems`);
process.exit(problems.length === 0 && files.length > 0 ? 0 : 1);
