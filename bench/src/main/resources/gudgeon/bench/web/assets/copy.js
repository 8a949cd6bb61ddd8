// Copies a text to the clipboard; where the device does not let a page do so, it is marked, to be copied by hand.
import { said } from "./words.js";

for (const button of document.querySelectorAll("button[data-copy]")) {
  button.addEventListener("click", async () => {
    const text = document.getElementById(button.dataset.copy);
    const told = button.parentElement.querySelector("[role=status]");
    try {
      await navigator.clipboard.writeText(text.value);
      told.textContent = said("Copied.");
    } catch {
      text.focus();
      text.select();
      told.textContent = said("It is marked: copy it with the device’s own menu.");
    }
  });
}
