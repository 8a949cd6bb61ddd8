// The pad: large keys that write into the reading's field, and the last reading said aloud where the person wants that.
const field = document.getElementById("value");
const unit = document.getElementById("unit");
const instrument = document.getElementById("instrument");
const warning = document.getElementById("warning");
const pad = document.getElementById("pad");
const keys = pad.querySelector(".keys");
const unitKey = keys.querySelector("[data-key=unit]");
const last = document.getElementById("last");
const aloud = document.getElementById("aloud");
const ALOUD = "gudgeon.aloud";
const KEPT = "gudgeon.reading-kept";

document.documentElement.classList.add("scripted");
keys.hidden = false;
// the pad is there, so that a phone need not push its own keyboard over it
field.inputMode = "none";

function write(text) {
  const from = field.selectionStart ?? field.value.length;
  const to = field.selectionEnd ?? from;
  field.setRangeText(text, from, to, "end");
}

function erase() {
  const from = field.selectionStart ?? field.value.length;
  const to = field.selectionEnd ?? from;
  if (from === to && from > 0) field.setRangeText("", from - 1, from, "end");
  else field.setRangeText("", from, to, "end");
}

function sign() {
  field.value = /^[-−]/.test(field.value) ? field.value.slice(1) : `−${field.value}`;
}

function showUnit() {
  if (unit) unitKey.textContent = unit.value;
}

const acts = {
  back: erase,
  minus: sign,
  point: () => write("."),
  unit: () => { if (unit) unit.value = unit.value === "mm" ? "in" : "mm"; showUnit(); },
};

keys.addEventListener("click", event => {
  const key = event.target.closest("[data-key]")?.dataset.key;
  if (!key) return;
  (acts[key] ?? (() => write(key)))();
});

instrument.addEventListener("change", () => {
  const chosen = instrument.selectedOptions[0];
  warning.textContent = chosen.dataset.warning ?? "";
  if (unit) unit.value = chosen.dataset.unit;
  showUnit();
  // a warning that comes up pushes the keys down
  keys.scrollIntoView({block: "nearest"});
});
unit?.addEventListener("change", showUnit);
showUnit();

// a change is read out; what stood there when the page came is not
const words = last.textContent.trim();
last.textContent = "";
setTimeout(() => { last.textContent = words; }, 50);

function utterance(text) {
  const spoken = new SpeechSynthesisUtterance(text);
  spoken.lang = document.documentElement.lang;
  return spoken;
}

if ("speechSynthesis" in window) {
  aloud.closest("[hidden]").hidden = false;
  aloud.checked = localStorage.getItem(ALOUD) === "yes";
  aloud.addEventListener("change", () => localStorage.setItem(ALOUD, aloud.checked ? "yes" : "no"));
  pad.addEventListener("submit", () => sessionStorage.setItem(KEPT, "yes"));
  if (words && aloud.checked && sessionStorage.getItem(KEPT)) speechSynthesis.speak(utterance(words));
  sessionStorage.removeItem(KEPT);
}
