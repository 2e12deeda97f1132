// SPDX-License-Identifier: Apache-2.0
// node check.js MODULES FOLDER
// Every FOLDER/*.html must be valid HTML (html-validate), without a finding of axe in its light, dark
// and printed form, fetch nothing, hold together on a telephone and stand on one side of A4; and each
// of these must find what is spoilt on purpose.
'use strict';

const fs = require('fs');
const path = require('path');
const {createRequire} = require('module');
const {pathToFileURL} = require('url');

const [modules, folder] = process.argv.slice(2);
const load = createRequire(path.join(path.resolve(modules), 'any.js'));
const puppeteer = load('puppeteer-core');
const {HtmlValidate} = load('html-validate');
const axeSource = fs.readFileSync(load.resolve('axe-core/axe.min.js'), 'utf8');

const validator = new HtmlValidate({
  root: true,
  extends: ['html-validate:recommended', 'html-validate:document'],
  // It counts `&lt;` as four letters of a title.
  rules: {'long-title': 'off'},
});

const px = 96 / 25.4;
const paper = {width: Math.floor(194 * px), height: Math.floor(285 * px)};
const screen = {width: 1200, height: 900};
const telephone = {width: 320, height: 700};

async function forms(browser, url) {
  const problems = [];
  const page = await browser.newPage();
  const fetched = [];
  page.on('request', (request) => {
    if (request.url() !== url) fetched.push(request.url());
  });
  const look = async (name, viewport, prepare) => {
    await page.setViewport(viewport);
    await page.emulateMediaType('screen');
    await prepare();
    await page.goto(url);
    await page.evaluate(axeSource);
    const found = await page.evaluate(() => axe.run(document, {resultTypes: ['violations']}));
    for (const each of found.violations) {
      problems.push(`axe, ${name}: ${each.id}: ${each.nodes[0].html.slice(0, 80)}`);
    }
    if (found.passes.length < 10) problems.push(`axe, ${name}: hardly a rule was tried`);
    const size = await page.evaluate(measure);
    if (size.width > viewport.width) problems.push(`${name}: wider than its window`);
    return size;
  };
  const scheme = (value) => () =>
    page.emulateMediaFeatures([{name: 'prefers-color-scheme', value}]);
  const light = await look('light', screen, scheme('light'));
  const dark = await look('dark', screen, scheme('dark'));
  if (light.paper === dark.paper) problems.push('light and dark look the same');
  await look('telephone', telephone, scheme('light'));
  const print = await look('print', paper, () => page.emulateMediaType('print'));
  if (print.height > paper.height) problems.push(`print: ${Math.round(print.height / px)} mm high`);
  problems.push(...print.outside.map((text) => `print: beyond its column: ${text}`));
  if (fetched.length > 0) problems.push(`fetches ${fetched[0]}`);
  await page.close();
  return problems;
}

// Runs in the page.
function measure() {
  const outside = [];
  for (const each of document.querySelectorAll('table, p, ul, svg')) {
    const column = each.closest('.work, .checks, .margin, header');
    if (column && each.getBoundingClientRect().right > column.getBoundingClientRect().right + 1) {
      outside.push(each.textContent.trim().slice(0, 40));
    }
  }
  return {
    width: document.documentElement.scrollWidth,
    height: document.querySelector('main').getBoundingClientRect().height,
    paper: getComputedStyle(document.body).backgroundColor,
    outside,
  };
}

async function problemsOf(browser, file) {
  const report = await validator.validateFile(file);
  const problems = report.results.flatMap((result) => result.messages.map(
    (message) => `html-validate: ${message.line}: ${message.ruleId}: ${message.message}`));
  return problems.concat(await forms(browser, pathToFileURL(file).href));
}

// What is spoilt, and a word of the finding that must follow.
const spoilt = [
  [/ lang="en"/, '', 'html-has-lang'],
  [/<title>[^<]*<\/title>/, '<title></title>', 'title'],
  [/<\/h1>/, '</h2>', 'html-validate'],
  [/<h2>/, '<h4>Odd</h4><h2>', 'heading'],
  [/<th scope="col">/, '<th scope="column">', 'scope'],
  [/<title id="share-1-name">[^<]*<\/title>/, '', 'html-validate'],
  [/<title id="boiling-name">[^<]*<\/title>\s*<desc id="boiling-description">[^<]*<\/desc>/, '', 'svg-img-alt'],
  [/<section>/, '<section id="a"></section><section id="a">', 'no-dup-id'],
  [/<\/style>/, 'p { color: #999; }</style>', 'axe, light: color-contrast'],
  [/<\/style>/, '@media (prefers-color-scheme: dark) { p { color: #555; } }</style>', 'axe, dark: color-contrast'],
  [/<\/style>/, '@media print { p { color: #999; } }</style>', 'axe, print: color-contrast'],
  [/<\/style>/, '@media print { li { font-size: 20pt; } }</style>', 'mm high'],
  [/<\/style>/, '@media print { table { min-width: 150mm; } }</style>', 'beyond its column'],
  [/<\/style>/, 'main { min-width: 30rem; }</style>', 'wider than its window'],
  [/<\/style>/, 'body { background: url("http://127.0.0.1:9/none.png"); }</style>', 'fetches'],
];

async function sabotage(browser, file) {
  const whole = fs.readFileSync(file, 'utf8');
  const problems = [];
  for (const [what, instead, word] of spoilt) {
    const text = whole.replace(what, instead);
    const copy = path.join(folder, 'spoilt.htm');
    if (text === whole) problems.push(`${file}: nothing to spoil for ${word}`);
    fs.writeFileSync(copy, text);
    const found = await problemsOf(browser, copy);
    if (!found.some((each) => each.includes(word))) {
      problems.push(`spoilt (${instead}), and no ${word}: ${found.join('; ')}`);
    }
  }
  return problems;
}

async function main() {
  const browser = await puppeteer.launch(
    {executablePath: process.env.CHROMIUM || '/usr/bin/chromium', args: ['--no-sandbox']});
  const files = fs.readdirSync(folder).filter((name) => name.endsWith('.html')).sort();
  const problems = [];
  for (const name of files) {
    const found = await problemsOf(browser, path.join(folder, name));
    problems.push(...found.map((each) => `${name}: ${each}`));
  }
  if (files.length > 0) problems.push(...await sabotage(browser, path.join(folder, files[0])));
  await browser.close();
  for (const problem of problems.slice(0, 50)) console.log(problem);
  console.log(`${files.length} pages, ${spoilt.length} spoilt, ${problems.length} problems`);
  return problems.length === 0 && files.length > 0 ? 0 : 1;
}

main().then((code) => process.exit(code), (error) => {
  console.log(error);
  process.exit(1);
});
