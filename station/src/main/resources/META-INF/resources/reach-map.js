// SPDX-License-Identifier: Apache-2.0
// Hands for the reach map: points can be dragged, moved with the arrow keys and removed, and a tap on the paper adds one.
// What a change means is worked out by the program: each change is sent as the editor's form.
const STEP = 1, FAR = 5; // °C and % RH, or °C of dew point: a key, a key with Shift
const MOVED = 4; // px; less is a tap
const PAUSE = 450; // ms after the last key

let again = ''; // the handle that had the focus
let typing = null; // what was being typed while the form was away

const form = () => document.getElementById('editor');
const map = () => form().querySelector('svg.reach-map');

function frame(svg) {
  const d = svg.dataset, n = key => Number(d[key]);
  const across = (n('warm') - n('cold')) / (n('right') - n('left'));
  const up = (n('high') - n('low')) / (n('bottom') - n('top'));
  return {
    across: x => n('cold') + (Math.min(Math.max(x, n('left')), n('right')) - n('left')) * across,
    up: y => n('low') + (n('bottom') - Math.min(Math.max(y, n('top')), n('bottom'))) * up,
    perAcross: 1 / across, perUp: 1 / up,
    inside: p => p.x >= n('left') && p.x <= n('right') && p.y >= n('top') && p.y <= n('bottom'),
  };
}

function at(svg, event) {
  const p = svg.createSVGPoint();
  p.x = event.clientX;
  p.y = event.clientY;
  return p.matrixTransform(svg.getScreenCTM().inverse());
}

function place(handle) {
  const [x, y] = handle.getAttribute('transform').match(/-?[\d.]+/g).map(Number);
  return { x, y };
}

function put(handle, p) {
  handle.setAttribute('transform', `translate(${p.x.toFixed(1)} ${p.y.toFixed(1)})`);
}

function field(name, value) {
  const input = document.createElement('input');
  input.type = 'hidden';
  input.name = name;
  input.value = value;
  form().append(input);
}

function send(fields, button) {
  for (const [name, value] of Object.entries(fields)) field(name, value);
  if (button) form().requestSubmit(button); else form().requestSubmit(form().querySelector('button[value=check]'));
}

/** A point's place on the axes; handles stand a little aside of their condition. */
function moved(svg, handle, from) {
  const f = frame(svg), to = place(handle);
  const aside = Number(handle.dataset.aside);
  again = handle.id;
  send({ moved: handle.dataset.point, 'at-across': f.across(to.x - aside).toFixed(3), 'at-up': f.up(to.y).toFixed(3) });
}

function grab(svg, handle, event) {
  const start = at(svg, event), from = place(handle);
  let far = false;
  handle.setPointerCapture(event.pointerId);
  handle.classList.add('is-held');
  const follow = e => {
    const p = at(svg, e);
    far = far || Math.hypot(p.x - start.x, p.y - start.y) > MOVED;
    if (far) put(handle, { x: from.x + p.x - start.x, y: from.y + p.y - start.y });
  };
  const stop = cancelled => {
    handle.removeEventListener('pointermove', follow);
    handle.classList.remove('is-held');
    if (cancelled) put(handle, from);
    else if (far) moved(svg, handle, from);
    else handle.focus();
  };
  handle.addEventListener('pointermove', follow);
  handle.addEventListener('pointerup', () => stop(false), { once: true });
  handle.addEventListener('pointercancel', () => stop(true), { once: true });
}

function key(svg, handle, event) {
  const step = event.shiftKey ? FAR : STEP, f = frame(svg), p = place(handle);
  const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  if (event.key in ways) {
    event.preventDefault();
    const [x, y] = ways[event.key];
    put(handle, { x: p.x + x * step * f.perAcross, y: p.y + y * step * f.perUp });
    clearTimeout(handle.waiting);
    handle.waiting = setTimeout(() => moved(svg, handle), PAUSE);
  } else if (event.key === 'Delete' || event.key === 'Backspace') {
    event.preventDefault();
    form().querySelector(`button[value="remove-${handle.dataset.point}"]`).click();
  } else if (event.key === 'Enter') {
    event.preventDefault();
    document.getElementById('t-' + handle.dataset.point).focus();
  }
}

function enhance() {
  const svg = form() && map();
  if (!svg || svg.dataset.ready) return;
  svg.dataset.ready = 'yes';
  form().querySelectorAll('[data-hint]').forEach(e => { e.hidden = false; });
  svg.querySelectorAll('.handle').forEach(handle => {
    handle.setAttribute('tabindex', '0');
    handle.setAttribute('role', 'button');
    handle.setAttribute('aria-label', handle.dataset.name);
    handle.addEventListener('pointerdown', e => { e.preventDefault(); grab(svg, handle, e); });
    handle.addEventListener('keydown', e => key(svg, handle, e));
  });
  svg.addEventListener('click', e => {
    const p = at(svg, e), f = frame(svg);
    if (e.target.closest('.handle') || !f.inside(p)) return;
    send({ moved: 0, 'at-across': f.across(p.x).toFixed(3), 'at-up': f.up(p.y).toFixed(3) });
  });
  const handle = again && document.getElementById(again);
  if (handle) handle.focus();
  again = '';
}

// The form comes back whole; what was typed since it was sent must not go with the old one.
document.addEventListener('htmx:beforeRequest', () => {
  form()?.querySelectorAll('input[id]').forEach(input => { input.dataset.sent = input.value; });
});
document.addEventListener('htmx:beforeSwap', () => {
  const input = document.activeElement;
  const since = input?.dataset.sent !== undefined && input.value !== input.dataset.sent;
  typing = since ? { id: input.id, value: input.value } : null;
});
document.addEventListener('htmx:afterSettle', () => {
  const input = typing && document.getElementById(typing.id);
  if (input) input.value = typing.value;
  typing = null;
});

enhance();
document.addEventListener('htmx:afterSettle', enhance);
