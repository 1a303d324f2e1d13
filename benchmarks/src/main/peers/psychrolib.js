// SPDX-License-Identifier: Apache-2.0
// PsychroLib as a contestant of benchmarks/compare; the requests are told in Contestant.java.
'use strict';
const fs = require('fs');
const readline = require('readline');
const psychrolib = require('psychrolib');
const version = require('psychrolib/package.json').version;

psychrolib.SetUnitSystem(psychrolib.SI);

const SHOWN = 1000;
let dewPoint, air, humidity, out;

function load(file) {
  const rows = fs.readFileSync(file, 'utf8').trim().split('\n').map((line) => line.split(',').map(Number));
  const column = (k) => Float64Array.from(rows, (row) => row[k]);
  dewPoint = column(0);
  air = column(1);
  humidity = column(2);
  out = new Float64Array(rows.length);
}

const works = {
  humidity() {
    for (let i = 0; i < out.length; i++) out[i] = psychrolib.GetRelHumFromTDewPoint(air[i], dewPoint[i]);
  },
  dewpoint() {
    for (let i = 0; i < out.length; i++) out[i] = psychrolib.GetTDewPointFromRelHum(air[i], humidity[i]);
  },
};

function processorNanos() {
  const usage = process.cpuUsage();
  return (usage.user + usage.system) * 1e3;
}

function time(work, milliseconds) {
  const begun = process.hrtime.bigint();
  const spent = processorNanos();
  let elapsed, times = 0;
  do {
    work();
    times++;
    elapsed = Number(process.hrtime.bigint() - begun);
  } while (elapsed < milliseconds * 1e6);
  const all = times * out.length;
  return `${elapsed / all} ${(processorNanos() - spent) / all}`;
}

function answer([verb, what, amount]) {
  switch (verb) {
    case 'version': return `${version} on node ${process.version}`;
    case 'load': load(what); return 'ok';
    case 'give': works[what](); return Array.from(out.subarray(0, SHOWN)).join(' ');
    case 'time': return time(works[what], Number(amount));
    default: return 'not understood';
  }
}

readline.createInterface({ input: process.stdin }).on('line', (line) => console.log(answer(line.split(' '))));
