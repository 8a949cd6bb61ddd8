// On a phone the row of pages is wider than the screen: the page that is open is brought into sight.
const here = document.querySelector(".tabs [aria-current]");
if (here) here.parentElement.scrollLeft = here.offsetLeft - (here.parentElement.clientWidth - here.offsetWidth) / 2;
