// SPDX-License-Identifier: Apache-2.0
// The keypad without a way to the program for each key, the seconds until the display is renewed, and a page that
// asks by itself once readings are wanted.
(() => {
  const place = document.querySelector('[data-entering]');
  if (!place) return;
  const field = document.getElementById('shown');

  function press(key) {
    if (key === 'back') field.value = field.value.slice(0, -1);
    else if (key === 'sign') field.value = field.value.startsWith('-') ? field.value.slice(1) : '-' + field.value;
    else if (field.value.length < field.maxLength) field.value += key;
    field.focus();
  }

  document.querySelectorAll('button[name=key]').forEach(button => {
    button.type = 'button'; // no longer sends the form
    button.addEventListener('click', () => press(button.value));
  });

  const wait = document.querySelector('[data-wait]');
  if (wait && Number(wait.dataset.wait) > 0) {
    const end = Date.now() + Number(wait.dataset.wait) * 1000;
    const tick = setInterval(() => {
      const left = Math.max(0, end - Date.now()) / 1000;
      wait.textContent = left > 0 ? wait.textContent.replace(/[\d.,]+/, left.toFixed(1)) : wait.dataset.now;
      if (left <= 0) clearInterval(tick);
    }, 200);
  }

  async function look() {
    try {
      const answer = await fetch('/api/bench/entries');
      if (!answer.ok) return;
      const known = (await answer.json()).channels.find(c => c.channel === place.dataset.channel);
      const changed = known && (String(known.wanted) !== place.dataset.wanted
        || String(known.standing) !== place.dataset.standing);
      if (changed && !(field && field.value)) location.reload();
    } catch (gone) { /* the next look may find it */ }
  }
  setInterval(look, 1500);
})();
