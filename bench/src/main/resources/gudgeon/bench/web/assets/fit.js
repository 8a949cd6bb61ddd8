// The Trial fit page's behaviour: every change is asked of the server at once and shown in place; the slider turns the engine.
import { Engine } from './engine.js';
import { drawPlan } from './plan.js';
import { drawSection } from './section.js';
import { number, said } from './words.js';

const one = (id) => document.getElementById(id);
const slider = one('turn');
const form = () => one('choice');
const page = { engine: readEngine(document), turned: new URLSearchParams(location.search).has('at'), asking: null, solid: null };

document.documentElement.classList.add('scripted');
if (matchMedia('(min-width: 64rem)').matches) one('sizes-all').open = true;

/** The drawing in a page, or null in one where the parts can't be tried. */
function readEngine(from) {
  const data = from.getElementById('drawing');
  return data && new Engine(JSON.parse(data.value));
}

/* ---- asking ---- */

/** What the form asks for, less all that is as the book has it. */
function question(settle) {
  const fields = new URLSearchParams(new FormData(form()));
  for (const input of form().querySelectorAll('[data-booked]')) {
    if (input.value.trim() === input.dataset.booked) fields.delete(input.name);
  }
  if (!page.turned) fields.delete('at');
  if (settle) fields.set('settle', 'yes');
  return `${form().getAttribute('action')}?${fields}`;
}

async function ask(whole, settle = false) {
  const address = question(settle);
  if (settle) say(said('Drawing lots: this takes a few seconds.'));
  page.asking?.abort();
  page.asking = new AbortController();
  const answer = await answerTo(`${address}&cures=later`);
  if (!answer) return;
  if (!page.engine) {
    location.replace(address);
    return;
  }
  history.replaceState(null, '', address);
  show(answer, whole);
  if (!answer.querySelector('#cures [data-later]')) return;
  const cured = await answerTo(address);
  if (cured?.getElementById('cures')) swap('cures', cured);
}

/** The page at an address, or nothing when a later question was asked meanwhile or there is no answer. */
async function answerTo(address) {
  try {
    const response = await fetch(address, { signal: page.asking.signal });
    if (!response.ok) throw new Error(response.statusText);
    return new DOMParser().parseFromString(await response.text(), 'text/html');
  } catch (fault) {
    if (fault.name !== 'AbortError') say(said('Gudgeon did not answer. Is it still running where it was started?'));
    return undefined;
  }
}

/** Puts the answer's live parts, or the whole form too, in the place of the page's; a field being typed in is left alone. */
function show(answer, whole) {
  const open = [...document.querySelectorAll('details[open][id]')].map((details) => details.id);
  const active = document.activeElement;
  const typing = one('sizes').contains(active);
  if (whole) swap('choice', answer);
  for (const part of document.querySelectorAll('[data-live]')) {
    const kept = whole ? part.closest('#choice') : part.id === 'sizes' ? typing : !typing && part.closest('#sizes');
    if (part.isConnected && !kept) swap(part.id, answer);
  }
  open.forEach((id) => one(id)?.setAttribute('open', ''));
  if (active?.id && !active.isConnected) one(active.id)?.focus();
  say(one('verdict-sentence').textContent);
  const refused = !answer.getElementById('drawing');
  one('found').classList.toggle('stale', refused);
  if (refused) return;
  page.engine = readEngine(answer);
  if (!page.turned) slider.value = answer.getElementById('turn').getAttribute('value');
  turn();
}

function swap(id, answer) {
  const fresh = answer.getElementById(id);
  if (fresh) one(id).replaceWith(document.adoptNode(fresh));
}

function say(sentence) {
  one('say').textContent = sentence;
}

let pause = 0;
const soon = () => { clearTimeout(pause); pause = setTimeout(() => ask(false), 300); };
const now = (whole) => { clearTimeout(pause); ask(whole); };

document.addEventListener('input', (event) => {
  if (event.target.form?.id === 'choice' && event.target.type === 'text') soon();
});
document.addEventListener('change', (event) => {
  const { target } = event;
  if (target.name === 'through') turn();
  else if (target.form?.id === 'choice' && target !== slider) now(target.name === 'units');
});
document.addEventListener('submit', (event) => {
  if (event.target.id !== 'choice') return;
  event.preventDefault();
  const back = event.submitter?.name === 'back' ? event.submitter : null;
  if (back) {
    const input = back.closest('.field').querySelector('input');
    input.value = input.dataset.booked;
    input.focus();
  }
  clearTimeout(pause);
  ask(false, event.submitter?.name === 'settle');
});

/* ---- turning ---- */

function turn() {
  const { engine } = page;
  const deg = Number(slider.value);
  const angle = number(deg, 1);
  one('angle').textContent = `${angle}°`;
  for (const cursor of document.querySelectorAll('.cursor')) {
    cursor.setAttribute('x1', deg);
    cursor.setAttribute('x2', deg);
  }
  const id = document.querySelector('input[name=through]:checked').value;
  const valve = engine.valves.find((v) => v.id === id);
  const words = engine.valves.map((v) => {
    const gap = engine.boreGap(v, deg);
    const lift = engine.length(engine.at(v.lift, deg));
    return gap === null ? said('{0} lift {1}, bore gap none', v.id, lift) : said('{0} lift {1}, bore gap {2}', v.id, lift, engine.length(gap));
  }).join('; ');
  one('reading').textContent = words;
  const coloured = {
    touches: said('red, metal in metal'), close: said('ochre, less than wanted'), clears: said('green, as wanted'),
  };
  one('solid-note').textContent = said('At {0}°: {1}. Drag across to turn it, or use the buttons or arrow keys.', angle,
    engine.valves.map((v) => said('{0} valve {1}', v.id, coloured[engine.standing(v, deg)])).join('; '));
  slider.setAttribute('aria-valuetext', said('{0} degrees; {1}', angle, words));
  drawSection(one('section'), one('section-note'), engine, valve, deg);
  drawPlan(one('plan'), one('plan-note'), engine, deg);
  page.solid?.show(engine, deg);
}

function turnTo(deg) {
  page.turned = true;
  slider.value = Math.max(0, Math.min(720, deg)).toFixed(1);
  turn();
}

/** Hands on the slider, the buttons and the plots; the view in the round is fetched when it comes into sight. */
function setTurning() {
  one('through').querySelector('input').checked = true;
  slider.addEventListener('input', () => turnTo(Number(slider.value)));
  slider.addEventListener('keydown', byKey);
  document.addEventListener('click', byClick);
  matchMedia('(prefers-color-scheme: dark)').addEventListener('change', turn);
  const sight = new IntersectionObserver((seen) => {
    if (!seen.some((s) => s.isIntersecting)) return;
    sight.disconnect();
    inTheRound();
  }, { rootMargin: '200px' });
  sight.observe(one('solid'));
  turn();
}

function byKey(event) {
  const way = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 10, PageDown: -10 }[event.key];
  if (!way) return;
  event.preventDefault();
  turnTo(Number(slider.value) + (event.shiftKey ? way / 10 : way));
}

function byClick(event) {
  const { by, to, spin } = event.target.closest('button')?.dataset ?? {};
  if (by) turnTo(Number(slider.value) + Number(by));
  if (to) turnTo(Number(to));
  if (spin) page.solid?.spin(...spin.split(' ').map(Number));
  const plot = event.target.closest('.plot > svg');
  if (plot) {
    const box = plot.getBoundingClientRect();
    turnTo(((event.clientX - box.left) / box.width) * 720);
  }
}

async function inTheRound() {
  try {
    const { Solid } = await import('./solid.js');
    page.solid = new Solid(one('solid'));
    turn();
  } catch {
    one('solid').textContent = said('This browser cannot show it in the round. The words below say the same.');
  }
}

if (page.engine) setTurning();
