// The map of a joint: zoomed, and ticked by touch where the person wants that; and a photo that is marked by touch.
import { said } from "./words.js";

const SVG = "http://www.w3.org/2000/svg";
const TOUCH = "gudgeon.touch-ticks";

function zoomed(map) {
  const bar = document.createElement("div");
  bar.className = "zoom";
  let level = 1;
  const word = document.createElement("output");
  const show = by => {
    level = Math.min(3, Math.max(1, level + by));
    map.classList.toggle("zoom-2", level === 2);
    map.classList.toggle("zoom-3", level === 3);
    word.textContent = `${level * 100} %`;
  };
  for (const [text, by] of [[said("Smaller"), -1], [said("Larger"), 1]]) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = text;
    button.addEventListener("click", () => show(by));
    bar.append(button);
  }
  bar.append(word);
  map.before(bar);
  show(0);
}

// a touch ticks the hole by sending the form that the button beside it would send
function ticked(map, form) {
  const touch = form.querySelector("[data-touch]");
  if (!touch) return;
  touch.closest("[hidden]").hidden = false;
  touch.checked = localStorage.getItem(TOUCH) === "yes";
  touch.addEventListener("change", () => localStorage.setItem(TOUCH, touch.checked ? "yes" : "no"));
  map.addEventListener("click", event => {
    const hole = event.target.closest("[data-hole]");
    if (!hole || !touch.checked) return;
    event.preventDefault();
    form.elements.hole.value = hole.dataset.hole;
    form.requestSubmit();
  });
}

function points(field) {
  return field.value.split("\n").map(line => line.trim().split(/[;\s]+/).map(Number))
    .filter(pair => pair.length === 2 && pair.every(Number.isFinite));
}

function marking(form) {
  const map = form.querySelector("[data-photo]");
  const svg = map.querySelector("svg");
  const photo = map.querySelector("img");
  const fields = [...form.querySelectorAll("[data-mark]")];
  let at = fields.find(field => !field.value) ?? fields[0];
  const marks = document.createElementNS(SVG, "g");

  function choose(field) {
    at = field;
    fields.forEach(one => one.classList.toggle("at", one === at));
  }

  function draw() {
    const size = Math.max(photo.naturalWidth, photo.naturalHeight) / 60;
    marks.replaceChildren();
    for (const field of fields) {
      for (const [x, y] of points(field)) {
        for (const style of ["marked", "marked-in"]) {
          const cross = document.createElementNS(SVG, "path");
          cross.setAttribute("class", style);
          cross.setAttribute("d", `M${x - size} ${y}h${2 * size}M${x} ${y - size}v${2 * size}`);
          marks.append(cross);
        }
        const word = document.createElementNS(SVG, "text");
        word.setAttribute("class", "marked-word");
        word.setAttribute("x", x + size / 2);
        word.setAttribute("y", y - size / 2);
        word.setAttribute("font-size", 1.4 * size);
        word.setAttribute("stroke-width", size / 5);
        word.textContent = field.dataset.mark === "outline" ? "" : form.querySelector(`label[for="${CSS.escape(field.id)}"]`).textContent;
        marks.append(word);
      }
    }
  }

  function ready() {
    svg.setAttribute("viewBox", `0 0 ${photo.naturalWidth} ${photo.naturalHeight}`);
    const image = svg.querySelector("image");
    image.setAttribute("width", photo.naturalWidth);
    image.setAttribute("height", photo.naturalHeight);
    svg.append(marks);
    map.classList.add("scripted");
    choose(at);
    draw();
  }

  fields.forEach(field => {
    field.addEventListener("focus", () => choose(field));
    field.addEventListener("input", draw);
  });
  svg.addEventListener("click", event => {
    const spot = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    const written = `${spot.x.toFixed(1)} ${spot.y.toFixed(1)}`;
    if (at.dataset.mark === "outline") {
      at.value = at.value.trim() ? `${at.value.trim()}\n${written}` : written;
    } else {
      at.value = written;
      choose(fields[fields.indexOf(at) + 1] ?? at);
    }
    draw();
  });
  if (photo.complete && photo.naturalWidth) ready();
  else photo.addEventListener("load", ready);
}

document.querySelectorAll(".hole-map").forEach(zoomed);
document.querySelectorAll("[data-hole-map]").forEach(map => {
  const form = document.querySelector(`[data-tick="${CSS.escape(map.dataset.holeMap)}"]`);
  if (form) ticked(map, form);
});
document.querySelectorAll("[data-marking]").forEach(marking);
