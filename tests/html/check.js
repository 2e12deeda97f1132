// SPDX-License-Identifier: Apache-2.0
// node check.js MODULES FOLDER
// Every FOLDER/*.html must be valid HTML (html-validate), without a finding of axe in its light, dark
// and printed form, fetch nothing, hold together on a telephone and stand on one side of A4. Labels
// must fill pages of their own in equal cells that nothing runs out of, in letters as large as the
// law asks. Each of these must find what is spoilt on purpose.
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

// The sizes a page is looked at in, each with its medium and colours.
const looks = {
  light: {viewport: screen, medium: 'screen', colours: 'light'},
  dark: {viewport: screen, medium: 'screen', colours: 'dark'},
  telephone: {viewport: telephone, medium: 'screen', colours: 'light'},
  print: {viewport: paper, medium: 'print'},
};

async function forms(browser, url, names) {
  const problems = [];
  const page = await browser.newPage();
  const fetched = [];
  page.on('request', (request) => {
    if (request.url() !== url) fetched.push(request.url());
  });
  const sizes = {};
  for (const name of names) {
    const {viewport, medium, colours} = looks[name];
    await page.setViewport(viewport);
    // Either sets the other back, and paper has no colours to choose.
    await page.emulateMediaType(medium);
    if (colours) await page.emulateMediaFeatures([{name: 'prefers-color-scheme', value: colours}]);
    await page.goto(url);
    await page.evaluate(axeSource);
    const found = await page.evaluate(() => axe.run(document, {resultTypes: ['violations']}));
    for (const each of found.violations) {
      problems.push(`axe, ${name}: ${each.id}: ${each.nodes[0].html.slice(0, 80)}`);
    }
    if (found.passes.length < 10) problems.push(`axe, ${name}: hardly a rule was tried`);
    sizes[name] = await page.evaluate(measure);
    if (sizes[name].width > viewport.width) problems.push(`${name}: wider than its window`);
  }
  const {light, dark, print} = sizes;
  if (light && dark && light.paper === dark.paper) problems.push('light and dark look the same');
  if (print) {
    for (const height of print.heights) {
      if (height > paper.height) problems.push(`print: ${Math.round(height / px)} mm high`);
    }
    problems.push(...problemsOfLabels(print.labels));
    problems.push(...print.outside.map((text) => `print: beyond its column: ${text}`));
  }
  if (fetched.length > 0) problems.push(`fetches ${fetched[0]}`);
  await page.close();
  return problems;
}

// Regulation (EU) 1169/2011, article 13: an x at least 1.2 mm high.
function problemsOfLabels(labels) {
  const problems = [];
  for (const label of labels) {
    if (label.x < 1.2 * px) problems.push(`letters: an x of ${(label.x / px).toFixed(2)} mm`);
    if (label.overflows) problems.push('beyond its label');
    const other = Math.abs(label.width - labels[0].width) > 1 ||
      Math.abs(label.height - labels[0].height) > 1;
    if (other) problems.push('a label of another size');
  }
  return [...new Set(problems)];
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
  const letters = (article) => [...article.querySelectorAll('p, th, td, caption, strong')].map((each) => {
    const probe = document.createElement('span');
    probe.style.cssText = 'position: absolute; width: 1ex; height: 0; padding: 0';
    each.append(probe);
    const x = probe.getBoundingClientRect().width;
    probe.remove();
    return x;
  });
  const labels = [...document.querySelectorAll('.labels article')].map((each) => ({
    x: Math.min(...letters(each)),
    width: each.getBoundingClientRect().width,
    height: each.getBoundingClientRect().height,
    overflows: each.scrollHeight > each.clientHeight || each.scrollWidth > each.clientWidth,
  }));
  const sides = document.querySelectorAll(labels.length > 0 ? '.maker, .page' : 'main');
  return {
    width: document.documentElement.scrollWidth,
    heights: [...sides].map((each) => each.getBoundingClientRect().height),
    labels,
    paper: getComputedStyle(document.body).backgroundColor,
    outside,
  };
}

async function problemsOf(browser, file, names = Object.keys(looks)) {
  const report = await validator.validateFile(file);
  const problems = report.results.flatMap((result) => result.messages.map(
    (message) => `html-validate: ${message.line}: ${message.ruleId}: ${message.message}`));
  return problems.concat(await forms(browser, pathToFileURL(file).href, names));
}

// What is spoilt, a word of the finding that must follow, and the look that must have it: none where
// the validator has.
const spoilt = [
  [/ lang="en"/, '', 'html-has-lang', 'light'],
  [/<title>[^<]*<\/title>/, '<title></title>', 'title', 'light'],
  [/<\/h1>/, '</h2>', 'html-validate'],
  [/<h2>/, '<h4>Odd</h4><h2>', 'heading', 'light'],
  [/<th scope="col">/, '<th scope="column">', 'scope', 'light'],
  [/<title id="share-1-name">[^<]*<\/title>/, '', 'html-validate'],
  [/<title id="boiling-name">[^<]*<\/title>\s*<desc id="boiling-description">[^<]*<\/desc>/, '', 'svg-img-alt', 'light'],
  [/<section>/, '<section id="a"></section><section id="a">', 'no-dup-id'],
  [/<\/style>/, 'p { color: #999; }</style>', 'axe, light: color-contrast', 'light'],
  [/<\/style>/, '@media (prefers-color-scheme: dark) { p { color: #555; } }</style>', 'axe, dark: color-contrast', 'dark'],
  [/<\/style>/, '@media print { p { color: #999; } }</style>', 'axe, print: color-contrast', 'print'],
  [/<\/style>/, '@media print { li { font-size: 20pt; } }</style>', 'mm high', 'print'],
  [/<\/style>/, '@media print { table { min-width: 150mm; } }</style>', 'beyond its column', 'print'],
  [/<\/style>/, 'main { min-width: 30rem; }</style>', 'wider than its window', 'telephone'],
  [/<\/style>/, 'body { background: url("http://127.0.0.1:9/none.png"); }</style>', 'fetches', 'light'],
];

const spoiltLabels = [
  [/<\/style>/, '@media print { article td { font-size: 6pt; } }</style>', 'letters: an x of', 'print'],
  [/<\/style>/, '@media print { article p { font-size: 20pt; } }</style>', 'beyond its label', 'print'],
  [/<\/style>/, '@media print { article:first-child { height: 30mm; } }</style>', 'of another size', 'print'],
  [/<\/style>/, '@media print { .page { grid-auto-rows: 150mm; } }</style>', 'mm high', 'print'],
  [/<\/style>/, '@media print { .labels p { color: #999; } }</style>', 'axe, print: color-contrast', 'print'],
];

async function sabotage(browser, file, spoilt) {
  const whole = fs.readFileSync(file, 'utf8');
  const problems = [];
  for (const [what, instead, word, ...names] of spoilt) {
    const text = whole.replace(what, instead);
    const copy = path.join(folder, 'spoilt.htm');
    if (text === whole) problems.push(`${file}: nothing to spoil for ${word}`);
    fs.writeFileSync(copy, text);
    const found = await problemsOf(browser, copy, names);
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
  const sheet = files.find((name) => !/^(label|card)_/.test(name));
  const labels = files.find((name) => name.startsWith('label_'));
  if (sheet) problems.push(...await sabotage(browser, path.join(folder, sheet), spoilt));
  if (labels) problems.push(...await sabotage(browser, path.join(folder, labels), spoiltLabels));
  await browser.close();
  for (const problem of problems.slice(0, 50)) console.log(problem);
  console.log(`${files.length} pages, ${problems.length} problems`);
  return problems.length === 0 && sheet && labels ? 0 : 1;
}

main().then((code) => process.exit(code), (error) => {
  console.log(error);
  process.exit(1);
});
