// The one-time code in the address: taken out of the address bar at once, and sent to the program once.

/** The code; null without one. What stays in the address bar is the job alone. */
function taken() {
  const given = new URLSearchParams(location.hash.slice(1));
  const code = given.get('pair');
  if (code !== null) {
    const job = given.get('job');
    history.replaceState(null, '', job ? `/#${encodeURIComponent(job)}` : '/');
  }
  return code;
}

/** @param {'asks' | 'refused' | 'without' | 'silent'} what @param {string} [text] */
function show(what, text) {
  for (const name of ['asks', 'refused', 'without', 'silent']) {
    const part = document.getElementById(`pairing-${name}`);
    part?.toggleAttribute('hidden', name !== what);
    if (part && name === what && text) {
      part.textContent = text;
    }
  }
}

/** Sends the code; the page comes in this one's place when it was right. */
async function pair() {
  const code = taken();
  if (code === null) {
    show('without');
    return;
  }
  show('asks');
  try {
    const reply = await fetch('/pair', { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ code }) });
    if (reply.ok) {
      location.reload();
    } else {
      show('refused', (await reply.text()).trim());
    }
  } catch {
    show('silent');
  }
}

if (document.getElementById('pairing')) {
  addEventListener('hashchange', pair);
  pair();
} else {
  // The page itself: an old code may stand in the address.
  taken();
}
