// The section: the plane through the bore's axis and the chosen valve's azimuth, seen so that the thrust side, as in the plan,
// is on the right.
import { path, shape } from './engine.js';
import { number, said } from './words.js';

const rad = Math.PI / 180;

export function drawSection(svg, note, engine, valve, deg) {
  const half = engine.bore / 2;
  const [left, top, width, height] = [-half - 9, -32, engine.bore + 18, engine.bore + 18];
  const plane = Math.cos(valve.azimuth * rad) < -1e-6 ? valve.azimuth - 180 : valve.azimuth;
  svg.setAttribute('viewBox', `${left} ${top} ${width} ${height}`);
  const crown = engine.crownAt(deg);
  const profile = profileOf(engine, plane, crown);
  const parts = [hatch(), ...walls(engine, top, height), piston(engine, profile, top + height)];
  parts.push(shape('path', { class: 'centre', d: `M0 ${top}V${top + height}` }));
  for (const other of engine.valves) {
    const apart = Math.abs(Math.sin((other.azimuth - plane) * rad));
    if (other !== valve && apart < 0.02) parts.push(...head(engine, other, plane, deg));
  }
  parts.push(...head(engine, valve, plane, deg));
  const gap = engine.boreGap(valve, deg);
  const place = gap === null ? null : nearestBelow(engine, valve, plane, deg, profile);
  if (place) parts.push(...arrow(engine, place, gap, engine.standing(valve, deg)));
  svg.replaceChildren(...parts);
  const found = engine.finding(valve, 'bore');
  const seen = [number(deg, 1), valve.id, engine.length(engine.at(valve.lift, deg)), engine.length(crown)];
  const text = gap === null
    ? said('At {0}°, through the {1} valve: lift {2}, crown’s edge {3} from the deck, no bore gap.', ...seen)
    : said('At {0}°, through the {1} valve: lift {2}, crown’s edge {3} from the deck, bore gap {4}, wanted {5}.',
      ...seen, engine.length(gap), engine.length(found ? found.wanted : 0));
  svg.setAttribute('aria-label', text);
  note.textContent = `${text} ${said('The arrow stands where this section is tightest; its figure is that of the whole valve.')}`;
}

function hatch() {
  const defs = shape('defs', {});
  const pattern = shape('pattern', { id: 'hatch', width: 1.4, height: 1.4, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' });
  pattern.append(shape('rect', { class: 'fill', width: 1.4, height: 1.4 }), shape('path', { class: 'hatch', d: 'M0 0V1.4' }));
  defs.append(pattern);
  return defs;
}

/** Barrel walls up to the deck, the gasket on it, and the head's joint face as a line. */
function walls(engine, top, height) {
  const half = engine.bore / 2;
  const parts = [];
  for (const side of [-1, 1]) {
    const x = side > 0 ? half : -half - 8;
    parts.push(shape('rect', { class: 'hatched', x, y: 0, width: 8, height: top + height }));
    parts.push(shape('rect', { class: 'disc', x, y: -engine.gasket, width: 8, height: engine.gasket }));
  }
  parts.push(shape('path', { class: 'dashed', d: `M${-half - 8} ${-engine.gasket}H${half + 8}` }));
  return parts;
}

function profileOf(engine, plane, crown) {
  const a = plane * rad;
  const half = engine.land / 2;
  const points = [];
  for (let n = 0; n <= 400; n++) {
    const s = -half + (engine.land * n) / 400;
    points.push([s, -(crown + engine.surface(s * Math.cos(a), s * Math.sin(a)))]);
  }
  return points;
}

function piston(engine, profile, bottom) {
  const half = engine.land / 2;
  return shape('path', { class: 'hatched', d: path([...profile, [half, bottom], [-half, bottom]], true) });
}

/** A valve whose axis lies in the plane: head, the cone of its back, and stem. */
function head(engine, valve, plane, deg) {
  const { face } = engine.valveAt(valve, deg);
  const turn = Math.cos((valve.azimuth - plane) * rad);
  const tilt = valve.tilt * rad;
  const axis = [Math.sin(tilt) * turn, -Math.cos(tilt)];
  const across = [-axis[1], axis[0]];
  const a = plane * rad;
  const foot = [face[0] * Math.cos(a) + face[1] * Math.sin(a), -face[2]];
  const at = (u, v) => [foot[0] + across[0] * u + axis[0] * v, foot[1] + across[1] * u + axis[1] * v];
  const [r, m, stem] = [valve.head / 2, valve.margin, valve.head * 0.12];
  const outline = [[-r, 0], [r, 0], [r, m], [stem * 1.6, m + r * 0.45], [stem, m + r * 0.8], [stem, 40], [-stem, 40],
    [-stem, m + r * 0.8], [-stem * 1.6, m + r * 0.45], [-r, m]].map(([u, v]) => at(u, v));
  return [shape('path', { class: 'disc', d: path(outline, true) }),
    shape('path', { class: 'centre', d: path([at(0, -3), at(0, 40)]) }),
    shape('text', { class: 'label', x: at(0, 17)[0], y: at(0, 17)[1], 'text-anchor': 'middle' }, valve.id)];
}

/** Where, along the section of the valve's face, the crown stands nearest below it. */
function nearestBelow(engine, valve, plane, deg, profile) {
  const { face } = engine.valveAt(valve, deg);
  const a = plane * rad;
  const tilt = valve.tilt * rad * Math.sign(Math.cos((valve.azimuth - plane) * rad));
  const foot = face[0] * Math.cos(a) + face[1] * Math.sin(a);
  let best = null;
  for (const [s, y] of profile) {
    const u = (s - foot) / Math.cos(tilt);
    if (Math.abs(u) <= valve.head / 2) {
      const under = -(face[2] - u * Math.sin(tilt));
      if (!best || y - under < best.gap) best = { s, crown: y, valve: under, gap: y - under };
    }
  }
  return best;
}

function arrow(engine, place, gap, standing) {
  const { s, crown, valve } = place;
  const beyond = 2.5;
  const [up, down] = [Math.min(crown, valve), Math.max(crown, valve)];
  const heads = `M${s - 0.7} ${up - 1.2}L${s} ${up}L${s + 0.7} ${up - 1.2}M${s - 0.7} ${down + 1.2}L${s} ${down}L${s + 0.7} ${down + 1.2}`;
  const side = s < 0 ? 1 : -1;
  return [
    shape('path', { class: `arrow ${standing}`, d: `M${s} ${up - beyond}V${down + beyond}${heads}` }),
    shape('text', { class: 'label', x: s + side * 1.2, y: down + beyond + 1.5, 'text-anchor': side < 0 ? 'end' : 'start' },
      `${engine.length(gap)} bore gap`)];
}
