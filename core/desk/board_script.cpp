// What keeps the board's page up to date. It asks every few seconds whether anything changed, writes texts only as texts, and says since
// when it has heard nothing. A wall that nobody touches is turned on page by page.
#include "core/desk/board_page.h"

namespace weavelog {

std::string_view board_script() {
  static constexpr std::string_view kScript = R"js(
(() => {
'use strict';
const POLL = 3000, PATIENCE = 5000, STALE = 8000, NEW = 60000, TURN = 12000, UNTOUCHED = 60000;
const root = document.documentElement, said = root.dataset;
const byId = id => document.getElementById(id);
let etag = said.etag, heard = Date.now(), served = Number(said.at), touched = 0;

const clock = at => {
  try { return new Intl.DateTimeFormat(root.lang, {timeStyle: 'short', timeZone: said.zone}).format(at); }
  catch { return new Date(at).toTimeString().slice(0, 5); }
};
const put = (node, text) => { if (node.textContent !== text) node.textContent = text; };
const tell = () => {
  const late = Date.now() - heard > STALE, stale = byId('stale');
  put(byId('asof'), said.asof.replace('{when}', clock(served)));
  put(stale, late ? said.stale.replace('{when}', clock(served)) : '');
  stale.hidden = !late;
};
const cell = (text, head) => {
  const node = document.createElement(head ? 'th' : 'td');
  if (head) node.scope = 'row';
  node.setAttribute('role', head ? 'rowheader' : 'cell');
  node.textContent = text;
  return node;
};
const row = cells => {
  const node = document.createElement('tr');
  node.setAttribute('role', 'row');
  node.append(...cells.map((text, i) => cell(text, i === 0)));
  return node;
};
const names = body => new Map([...body.rows].map(node => [node.cells[0].textContent, node]));
const fill = (name, part) => {
  const section = byId(name), body = section.querySelector('tbody'), before = names(body), fresh = [];
  body.replaceChildren(...part.rows.map(cells => {
    const node = row(cells), old = before.get(cells[0]);
    if (name === 'ready' && (!old || old.classList.contains('new'))) {
      node.className = 'new';
      node.dataset.since = old ? old.dataset.since : Date.now();
      if (!old) fresh.push(cells[0]);
    }
    return node;
  }));
  put(section.querySelector('.count'), part.count);
  put(section.querySelector('.more'), part.more);
  section.querySelector('table').hidden = part.rows.length === 0;
  section.querySelector('.more').hidden = part.more === '';
  section.querySelector('.none').hidden = part.rows.length > 0;
  if (fresh.length > 0) put(byId('said'), said.ready.replace('{who}', fresh.join(', ')));
};
const show = board => {
  if (board.page !== said.page) { location.reload(); return; }
  put(byId('event'), board.event);
  put(byId('note'), board.note);
  byId('note').hidden = board.note === '';
  for (const [name, part] of Object.entries(board.parts)) fill(name, part);
  byId('desk').hidden = board.parts.desk.rows.length === 0;
};
const ask = async () => {
  const ender = new AbortController(), limit = setTimeout(() => ender.abort(), PATIENCE);
  try {
    const answer = await fetch('/board.json', {cache: 'no-store', credentials: 'omit', signal: ender.signal,
      headers: {'If-None-Match': etag, 'Accept-Language': root.lang}});
    if (answer.status === 200) {
      show(await answer.json());
      etag = answer.headers.get('ETag');
    } else if (answer.status !== 304) throw new Error(answer.status);
    heard = Date.now();
    served = Date.parse(answer.headers.get('Date')) || heard;
  } catch { /* the note says so */ } finally { clearTimeout(limit); }
  tell();
};
const poll = async () => {
  if (!document.hidden) await ask();
  setTimeout(poll, POLL + Math.random() * 500);
};
const tick = () => {
  tell();
  for (const node of document.querySelectorAll('tr.new'))
    if (Date.now() - node.dataset.since > NEW) node.className = '';
};
const turn = () => {
  const room = window.innerHeight, whole = root.scrollHeight;
  if (window.innerWidth < 1000 || whole <= room + 8 || Date.now() - touched < UNTOUCHED) return;
  const end = window.scrollY + room >= whole - 8;
  window.scrollTo(0, end ? 0 : window.scrollY + room * 0.85);
};
for (const what of ['pointerdown', 'pointermove', 'wheel', 'keydown', 'touchstart', 'focusin'])
  addEventListener(what, () => { touched = Date.now(); }, {passive: true});
document.addEventListener('visibilitychange', () => { if (!document.hidden) ask(); });
setInterval(tick, 1000);
setInterval(turn, TURN);
setTimeout(poll, Math.random() * 1000);
})();
)js";
  return kScript;
}

}  // namespace weavelog
