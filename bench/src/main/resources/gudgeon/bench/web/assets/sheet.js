// Typing a sheet in: Enter goes on to the next field, and keeps the sheet only from its last.
const form = document.getElementById("sheet");

form.addEventListener("keydown", event => {
  if (event.key !== "Enter" || event.target.tagName !== "INPUT") return;
  const fields = [...form.querySelectorAll("input[type=text]")];
  const next = fields[fields.indexOf(event.target) + 1];
  if (!next) return;
  event.preventDefault();
  next.focus();
});

document.getElementById("of").addEventListener("change", event => event.target.form.requestSubmit());
