// Keeps what is ticked on this device until the server has it on disk. Each form carries a key, so sending again does no harm.
import { said } from "./words.js";

const STORE = "gudgeon.queue";
const RETRY_MS = 4000;
const LONGEST_WAIT_S = 60;
const line = document.getElementById("queue");
const forms = new Map();
let sending = false;
let timer = 0;

const kept = () => JSON.parse(localStorage.getItem(STORE) ?? "[]");
const keep = list => localStorage.setItem(STORE, JSON.stringify(list));

function say(text, buttons = []) {
  if (!line) return;
  line.replaceChildren(document.createTextNode(text));
  for (const [word, act] of buttons) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = word;
    button.addEventListener("click", act);
    line.append(" ", button);
  }
}

function count() {
  const n = kept().length;
  if (n === 0) say("");
  else if (n === 1) say(said("1 tick waits on this device. The server does not answer; it is sent, in order, as soon as it does."));
  else say(said("{0} ticks wait on this device. The server does not answer; they are sent, in order, as soon as it does.", n));
}

// a server that is there and can't take it down now says why; the ticks wait until it can
function hold(answer, reply) {
  const n = kept().length;
  const waiting = n === 1
    ? said("1 tick waits on this device and is sent again by itself.")
    : said("{0} ticks wait on this device and are sent again by themselves.", n);
  say(`${answer.sentences.join(" ")} ${waiting}`);
  const seconds = Number(reply.headers.get("Retry-After")) || RETRY_MS / 1000;
  timer = setTimeout(flush, 1000 * Math.min(seconds, LONGEST_WAIT_S));
}

// what holds back a device that asks too fast stands before the pages and answers in plain words
async function answerOf(reply) {
  const kind = reply.headers.get("Content-Type") ?? "";
  if (kind.startsWith("application/json")) return reply.json();
  const words = kind.startsWith("text/plain") ? (await reply.text()).trim() : said("The server answered {0} and took nothing down.", reply.status);
  return {state: "later", sentences: [words]};
}

function drop(key) {
  keep(kept().filter(item => item.key !== key));
}

// what the server could not take stays at the head of the queue until the person has said what to do with it
function ask(item, answer) {
  const form = forms.get(item.key);
  if (answer.state === "refused" && form?.isConnected) {
    drop(item.key);
    form.classList.remove("kept");
    form.querySelectorAll("button").forEach(button => { button.disabled = false; });
    say(answer.sentences.join(" "));
    line?.scrollIntoView({block: "nearest"});
    return;
  }
  const buttons = [];
  if (answer.state === "asked") {
    askAbout(item, answer, form);
    return;
  }
  if (answer.state === "clashed") {
    buttons.push([said("Send mine all the same"), () => {
      item.body = item.body.replace(/(^|&)seen=\d+/, `$1seen=${answer.seen}`);
      keep([item, ...kept().filter(other => other.key !== item.key)]);
      flush();
    }]);
  }
  buttons.push([answer.state === "clashed" ? said("Leave theirs") : said("Leave it out"), () => {
    drop(item.key);
    location.assign(item.back);
  }]);
  say(answer.sentences.join(" "), buttons);
  line?.scrollIntoView({block: "nearest"});
}

// a reading that looks like a slip is never put right unasked; where several do, they are asked about one after the other
function askAbout(item, answer, form) {
  const question = answer.questions[0];
  const send = value => () => {
    item.body = `${item.body}&${new URLSearchParams({[question.answer]: value})}`;
    keep([item, ...kept().filter(other => other.key !== item.key)]);
    flush();
  };
  const again = () => {
    drop(item.key);
    form.classList.remove("kept");
    form.querySelectorAll("button").forEach(button => { button.disabled = false; });
    say("");
    form.elements[question.answer.replace("answer.", "")].select();
  };
  say(answer.sentences.join(" "), [
    ...question.meant.map(meant => [said("{0} is meant", meant), send(meant)]),
    [said("{0}, as typed", question.typed), send("stands")],
    [said("Read it again"), form?.isConnected ? again : send("again")],
  ]);
  line?.scrollIntoView({block: "nearest"});
}

async function flush() {
  if (sending) return;
  sending = true;
  clearTimeout(timer);
  let back = "";
  try {
    for (let item = kept()[0]; item; item = kept()[0]) {
      const reply = await fetch(item.url, {
        method: "POST",
        headers: {"Content-Type": "application/x-www-form-urlencoded", "Accept": "application/json"},
        body: item.body,
      });
      const answer = await answerOf(reply);
      if (answer.state === "later") {
        hold(answer, reply);
        return;
      }
      if (answer.state !== "kept") {
        ask(item, answer);
        return;
      }
      drop(item.key);
      back = item.back;
    }
    count();
    if (back) location.assign(back);
  } catch {
    count();
    timer = setTimeout(flush, RETRY_MS);
  } finally {
    sending = false;
  }
}

document.addEventListener("submit", event => {
  const form = event.target;
  if (!form.matches("form[data-keep]")) return;
  const data = new FormData(form, event.submitter);
  const photo = data.get("photo");
  const withPhoto = photo instanceof File && photo.size > 0;
  data.delete("photo");
  if (withPhoto && navigator.onLine) return;
  event.preventDefault();
  if (!form.reportValidity()) return;
  data.set("ticked", new Date().toISOString());
  const body = new URLSearchParams(data).toString();
  keep([...kept(), {key: data.get("key"), url: form.getAttribute("action"), body, back: data.get("back")}]);
  forms.set(data.get("key"), form);
  form.classList.add("kept");
  form.querySelectorAll("button").forEach(button => { button.disabled = true; });
  say(withPhoto ? said("Kept on this device, but without the photo: take it again when the server answers.") : said("Sending …"));
  flush();
});

addEventListener("online", flush);
if (kept().length > 0) flush();
