// node answer-all.mjs MODULE QUESTIONS ANSWERS: one question a line, one answer a line.
import {readFileSync, writeFileSync} from 'node:fs';
import {pathToFileURL} from 'node:url';

const [module, questions, answers] = process.argv.slice(2);
const {answer} = await import(pathToFileURL(module));
const lines = readFileSync(questions, 'utf8').trimEnd().split('\n');
writeFileSync(answers, lines.map((line) => `${answer(line)}\n`).join(''));
