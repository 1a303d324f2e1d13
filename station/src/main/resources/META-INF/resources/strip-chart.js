// SPDX-License-Identifier: Apache-2.0
// The strip chart of a run: one panel for each quantity. References are solid, instruments dashed, each with its name
// at the line's end.
const place = document.getElementById('strip-chart');
const spans = document.querySelector('[data-spans]');
const style = getComputedStyle(document.documentElement);
const hue = name => style.getPropertyValue(name).trim();
const COLOUR = { relative_humidity: hue('--humidity'), temperature: hue('--temperature'), dew_point: hue('--dew') };
const DASHES = [[6, 4], [2, 3], [10, 3, 2, 3], [10, 4, 2, 4, 2, 4]];
const LEAST = { relative_humidity: 1, temperature: 0.2, dew_point: 0.2 }; // no axis is so fine that noise fills it
const MOST = 4000;
const FONT = '14px "Source Sans 3", sans-serif';

let span = 'hour';
let panels = [];
let last = 0;
let busy = false;

const number = value => String(value).replace('-', '\u2212');

function range(quantity) {
  return (plot, low, high) => {
    if (low == null) return [0, 1];
    const middle = (low + high) / 2;
    const half = Math.max((high - low) * 0.55, LEAST[quantity] / 2);
    return [middle - half, middle + half];
  };
}

/** Names at the ends of lines, moved apart where they would cover each other. */
function labels(lines) {
  return plot => {
    const ctx = plot.ctx, ratio = devicePixelRatio;
    ctx.save();
    ctx.font = FONT.replace('14', String(14 * ratio));
    ctx.textBaseline = 'middle';
    ctx.textAlign = 'left';
    const ends = lines.map((line, i) => {
      const values = plot.data[i + 1];
      let at = values.length - 1;
      while (at >= 0 && values[at] == null) at--;
      return at < 0 ? null : { line, y: plot.valToPos(values[at], 'y', true) };
    }).filter(Boolean).sort((a, b) => a.y - b.y);
    const step = 15 * ratio;
    ends.forEach((end, i) => { if (i > 0) end.y = Math.max(end.y, ends[i - 1].y + step); });
    const over = ends.length ? ends[ends.length - 1].y - (plot.bbox.top + plot.bbox.height) : 0;
    for (const end of ends) {
      ctx.fillStyle = COLOUR[end.line.quantity];
      ctx.fillText(end.line.label, plot.bbox.left + plot.bbox.width + 6 * ratio, end.y - Math.max(0, over));
    }
    ctx.restore();
  };
}

function panel(quantity, unit, lines, width, height) {
  const title = document.createElement('p');
  title.className = 'panel-unit q-' + quantity;
  title.textContent = unit.title;
  const box = document.createElement('div');
  box.setAttribute('role', 'img');
  place.append(title, box);
  const plot = new uPlot({
    width, height,
    legend: { show: false },
    cursor: { y: false, sync: { key: 'strip' }, points: { size: 6 } },
    padding: [8, 92, 0, 0],
    scales: { x: { time: true }, y: { range: range(quantity) } },
    axes: [
      { font: FONT, stroke: hue('--quiet'), grid: { stroke: hue('--hairline'), width: 1 }, ticks: { show: false },
        values: '{HH}:{mm}', space: 70, size: 28 },
      { font: FONT, stroke: hue('--quiet'), grid: { stroke: hue('--hairline'), width: 1 }, ticks: { show: false },
        size: 56, space: 22, values: (u, ticks) => ticks.map(number) },
    ],
    series: [{}].concat(lines.map((line, i) => ({
      stroke: COLOUR[quantity], width: line.kind === 'reference' ? 2 : 1.5, points: { show: false }, spanGaps: false,
      dash: line.kind === 'reference' ? undefined : DASHES[lines.slice(0, i).filter(l => l.kind !== 'reference').length % DASHES.length],
    }))),
    hooks: { draw: [labels(lines)] },
  }, [[]].concat(lines.map(() => [])), box);
  return { plot, lines, box, unit };
}

function build(trace) {
  place.replaceChildren();
  panels = trace.units.map(unit => {
    const lines = trace.lines.map((line, i) => ({ ...line, column: i })).filter(l => l.quantity === unit.quantity);
    return panel(unit.quantity, unit, lines, place.clientWidth, height());
  });
}

const height = () => (window.innerWidth >= 1200 ? 118 : 140);

function extend(trace) {
  for (const p of panels) {
    const old = p.plot.data;
    let data = [old[0].concat(trace.time)].concat(p.lines.map((line, i) => old[i + 1].concat(trace.values[line.column])));
    const from = span === 'hour' ? data[0].findIndex(t => t > data[0][data[0].length - 1] - 3600) : 0;
    if (from > 0) data = data.map(column => column.slice(from));
    if (data[0].length > MOST) data = data.map(column => column.filter((_, i) => i % 2 === column.length % 2));
    p.plot.setData(data);
    p.box.setAttribute('aria-label', p.unit.title + ': ' + p.lines.map((line, i) => {
      const value = data[i + 1][data[i + 1].length - 1];
      return line.label + ' ' + (value == null ? '\u2013' : number(value.toFixed(2)));
    }).join(', '));
  }
  if (trace.time.length) last = trace.time[trace.time.length - 1];
}

async function refresh(fresh) {
  if (busy) return;
  busy = true;
  try {
    if (fresh) last = 0;
    const reply = await fetch(`/api/runs/${place.dataset.run}/trace?span=${span}&after=${last}`);
    if (!reply.ok) return;
    const trace = await reply.json();
    if (fresh || panels.length === 0) build(trace);
    extend(trace);
  } catch (lost) {
    // the page says by itself that the connection is gone
  } finally {
    busy = false;
  }
}

if (place) {
  let taken = -1;
  spans.hidden = false;
  span = spans.querySelector('[aria-pressed=true]').dataset.span;
  spans.addEventListener('click', event => {
    const chosen = event.target.dataset.span;
    if (!chosen) return;
    span = chosen;
    spans.querySelectorAll('button').forEach(b => b.setAttribute('aria-pressed', String(b.dataset.span === span)));
    refresh(true);
  });
  document.addEventListener('beat', event => {
    if (event.detail.taken !== taken) {
      taken = event.detail.taken;
      refresh(panels.length === 0);
    }
  });
  new ResizeObserver(() => panels.forEach(p => p.plot.setSize({ width: place.clientWidth, height: height() }))).observe(place);
  document.fonts.ready.then(() => refresh(true));
}
