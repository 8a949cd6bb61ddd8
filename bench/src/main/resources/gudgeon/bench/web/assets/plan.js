// The plan: the crown seen from the head. x, the thrust side, points to the right; y up the page.
import { path, shape } from './engine.js';
import { number, said } from './words.js';

const rad = Math.PI / 180;

export function drawPlan(svg, note, engine, deg) {
  const reach = engine.bore / 2 + 4;
  svg.setAttribute('viewBox', `${-reach} ${-reach} ${2 * reach} ${2 * reach}`);
  const parts = [
    shape('circle', { class: 'void', r: engine.bore / 2 }),
    shape('circle', { class: 'metal', r: engine.land / 2 }),
    shape('path', { class: 'centre', d: `M${-reach} 0H${reach}M0 ${-reach}V${reach}` })];
  if (engine.form.radius) parts.push(shape('circle', { class: 'dashed', r: engine.form.radius }));
  for (const pocket of engine.pockets) {
    parts.push(shape('path', { class: 'hatched', d: path(mouth(engine, pocket), true) }));
    parts.push(...metalLeft(engine, pocket));
  }
  for (const valve of engine.valves) {
    const { face, axis } = engine.valveAt(valve, deg);
    parts.push(shape('path', { class: `outline ${engine.standing(valve, deg)}`, d: path(rim(face, axis, valve.head / 2), true) }));
    parts.push(shape('text', { class: 'label', x: face[0], y: 4 - face[1], 'text-anchor': 'middle' }, valve.id));
  }
  const words = [];
  for (const valve of engine.valves) {
    const found = engine.finding(valve, 'bore');
    if (found && found.place) {
      const [x, y] = found.place;
      parts.push(shape('circle', { class: `spot ${found.verdict}`, cx: x, cy: -y, r: 1.1 }));
      words.push(`${valve.id} ${engine.length(x)}, ${engine.length(y)}`);
    }
  }
  svg.replaceChildren(...parts);
  const text = said('Least bore gap, marked by a dot, at x, y from the bore’s centre: {0}.', words.join('; '));
  svg.setAttribute('aria-label', `${said('Plan of the crown.')} ${text}`);
  const left = engine.pockets.filter((p) => p.toEdge !== undefined)
    .map((p) => `${p.toEdgeLabel} ${engine.length(p.toEdge)}`).join('; ');
  note.textContent = [text, said('Valve edges at {0}°.', number(deg, 1)), left && said('Where the heavy line stands: {0}.', left)]
    .filter(Boolean).join(' ');
}

/** A circle about an axis, seen from above. */
function rim(centre, axis, r) {
  const flat = Math.hypot(axis[0], axis[1]);
  const a = flat > 1e-9 ? [-axis[1] / flat, axis[0] / flat] : [1, 0];
  const b = flat > 1e-9 ? [axis[0] * axis[2] / flat, axis[1] * axis[2] / flat] : [0, 1];
  return ring((c, s) => [centre[0] + r * (a[0] * c + b[0] * s), -(centre[1] + r * (a[1] * c + b[1] * s))]);
}

function ring(at) {
  return Array.from({ length: 72 }, (_, n) => at(Math.cos(n * 5 * rad), Math.sin(n * 5 * rad)));
}

/** The pocket's edge on the crown: from its axis outwards in each direction, as far as the crown is cut. */
function mouth(engine, pocket) {
  const c = Math.cos(pocket.azimuth * rad);
  const s = Math.sin(pocket.azimuth * rad);
  const alone = Object.assign(Object.create(Object.getPrototypeOf(engine)), engine, { pockets: [pocket] });
  const bare = Object.assign(Object.create(Object.getPrototypeOf(engine)), engine, { pockets: [] });
  const start = pocket.offset + (pocket.depth / 2) * -Math.sin(pocket.tilt * rad);
  return ring((cos, sin) => {
    let [near, far] = [0, pocket.diameter];
    for (let n = 0; n < 18; n++) {
      const r = (near + far) / 2;
      const [x, y] = [start * c + r * cos, start * s + r * sin];
      if (Math.hypot(x, y) < engine.land / 2 && alone.surface(x, y) < bare.surface(x, y) - 1e-6) near = r;
      else far = r;
    }
    return [start * c + near * cos, -(start * s + near * sin)];
  });
}

/** A line from the pocket's farthest edge to the land. */
function metalLeft(engine, pocket) {
  const edge = mouth(engine, pocket);
  const [x, y] = edge.reduce((a, b) => (Math.hypot(...b) > Math.hypot(...a) ? b : a));
  const r = Math.hypot(x, y);
  if (r >= engine.land / 2 - 0.05 || r < 1) return [];
  const f = engine.land / 2 / r;
  const mark = [shape('path', { class: 'arrow', d: path([[x, y], [x * f, y * f]]) })];
  if (pocket.toEdge !== undefined) {
    const side = x < 0 ? 'start' : 'end';
    mark.push(shape('text', { class: 'label', x: x - Math.sign(x) * 1.5, y: y - 1.2, 'text-anchor': side }, engine.length(pocket.toEdge)));
  }
  return mark;
}
