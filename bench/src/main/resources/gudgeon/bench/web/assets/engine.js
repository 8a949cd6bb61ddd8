// The top end as drawn: reads what the page was given and finds, for the drawing's sake alone, what stands where at an angle.
// No figure that a person reads comes from here but those of the curves, read off between two samples.

import { number } from './words.js';

const rad = Math.PI / 180;

export class Engine {
  constructor(drawing) {
    Object.assign(this, drawing);
    this.step = this.theta[1] - this.theta[0];
  }

  /** A curve's value at an angle, or null where it has none. */
  at(curve, deg) {
    const place = Math.min(curve.length - 1, Math.max(0, deg / this.step));
    const i = Math.min(curve.length - 2, Math.floor(place));
    const [a, b] = [curve[i], curve[i + 1]];
    return a === null || b === null ? null : a + (b - a) * (place - i);
  }

  /** Height of the crown's reference plane above the deck. */
  crownAt(deg) {
    return this.at(this.crown, deg);
  }

  /** Height of the crown's surface above its reference plane at (x, y), pockets cut. */
  surface(x, y) {
    const r2 = x * x + y * y;
    const { kind, radius, sphere, centre } = this.form;
    let z = 0;
    if (kind !== 'flat' && r2 < radius * radius) {
      const up = Math.sqrt(sphere * sphere - r2);
      z = kind === 'dome' ? centre + up : centre - up;
    }
    for (const pocket of this.pockets) {
      z = cut(pocket, x, y, z);
    }
    return z;
  }

  /** A valve's axis (pointing up its stem) and the centre of its face, in the cylinder's frame. */
  valveAt(valve, deg) {
    const along = [Math.cos(valve.azimuth * rad), Math.sin(valve.azimuth * rad)];
    const [sin, cos] = [Math.sin(valve.tilt * rad), Math.cos(valve.tilt * rad)];
    const axis = [sin * along[0], sin * along[1], cos];
    const lift = this.at(valve.lift, deg);
    const shut = [valve.offset * along[0], valve.offset * along[1], this.gasket + valve.recess];
    return { axis, along, lift, face: shut.map((v, i) => v - lift * axis[i]) };
  }

  /** A length in words, in the page's unit. */
  length(mm) {
    const text = number(mm / this.unit.mm, this.unit.digits).replace(/^-(0[.,]?0*)$/, '$1').replace('-', '−');
    return `${text}\u00a0${this.unit.symbol}`;
  }

  /** What was found of one gap of a valve. */
  finding(valve, kind) {
    return this.findings.find((f) => f.kind === kind && f.valves.length === 1 && f.valves[0] === valve.id);
  }

  /** A valve's bore gap at an angle, or null; where the least was found, that itself and not what lies between samples. */
  boreGap(valve, deg) {
    const found = this.finding(valve, 'bore');
    return found && Math.abs(found.at - deg) <= 0.06 ? found.least : this.at(valve.bore, deg);
  }

  /** How a valve's bore gap stands at an angle: touches, close or clears. */
  standing(valve, deg) {
    const gap = this.boreGap(valve, deg);
    const found = this.finding(valve, 'bore');
    if (gap === null || !found) return 'clears';
    return gap < 0 ? 'touches' : gap < found.wanted ? 'close' : 'clears';
  }
}

/** The surface's height after one pocket: where the cutter took the metal at this height, its floor or its wall remains. */
function cut(pocket, x, y, z) {
  const [c, s] = [Math.cos(pocket.azimuth * rad), Math.sin(pocket.azimuth * rad)];
  const [sin, cos] = [Math.sin(pocket.tilt * rad), Math.cos(pocket.tilt * rad)];
  const across = -x * s + y * c;
  const out = x * c + y * s - pocket.offset;
  const half = Math.sqrt((pocket.diameter / 2) ** 2 - across * across);
  if (!(half > 0)) return z;
  const floor = (-pocket.depth - out * sin) / cos;
  if (Math.abs(sin) < 1e-6) return Math.abs(out) <= half ? Math.min(z, floor) : z;
  const walls = [(out * cos - half) / sin, (out * cos + half) / sin];
  const low = Math.max(floor, Math.min(...walls));
  const high = Math.max(...walls);
  return low < z && z <= high ? low : z;
}

/** An element of a drawing. */
export function shape(name, attributes, text) {
  const element = document.createElementNS('http://www.w3.org/2000/svg', name);
  for (const [key, value] of Object.entries(attributes)) {
    element.setAttribute(key, value);
  }
  if (text !== undefined) element.textContent = text;
  return element;
}

/** A path through points. */
export function path(points, closed) {
  return `M${points.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}${closed ? 'Z' : ''}`;
}
