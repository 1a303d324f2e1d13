// SPDX-License-Identifier: Apache-2.0
// Keeps a live page honest: when no beat has come for too long, it says so and greys its figures.
(() => {
  const SILENT_FOR = 2500; // ms; a beat comes every second, and a person must know within three
  let heard = Date.now();

  function show(lost) {
    document.body.classList.toggle('is-lost', lost);
    document.querySelectorAll('[data-lost]').forEach(e => { e.hidden = !lost; });
  }

  function beat(event) {
    heard = Date.now();
    const [run, taken] = event.data.split(' ');
    const shown = document.querySelector('[data-run]');
    if (shown && run !== '-' && run !== shown.dataset.run) {
      location.reload(); // another run is on the bench
      return;
    }
    document.dispatchEvent(new CustomEvent('beat', { detail: { run, taken: Number(taken) } }));
  }

  // the stream is opened by the page's sse extension; this only listens in
  window.htmx.createEventSource = url => {
    const source = new EventSource(url);
    source.addEventListener('beat', beat);
    return source;
  };

  setInterval(() => show(Date.now() - heard > SILENT_FOR), 250);
  document.addEventListener('visibilitychange', () => {
    if (!document.hidden) heard = Math.max(heard, Date.now() - SILENT_FOR + 1500); // timers slept, the stream did not
  });
})();
