// The colours: those of the system, light or dark. The program remembers the choice.
import { asked } from './asking.js';
import { $ } from './dom.js';
import { words } from './words.js';

const said = words.frame;

/** Each choice, in the order of the button: its name, its text on the button, its label. */
const looks = [{ name: 'system', text: said.look, label: said.lookSystem }, { name: 'light', text: said.light, label: said.lookLight }, { name: 'dark', text: said.dark, label: said.lookDark }];

const chosen = () => Math.max(0, looks.findIndex((look) => look.name === document.documentElement.dataset.look));

/** Shows the choice that came with the document, or was made since. */
export function showLook() {
  const { text, label } = looks[chosen()];
  $('do-look').textContent = text;
  $('do-look').setAttribute('aria-label', label);
}

/** Takes the next choice and has it remembered. */
export async function nextLook() {
  const look = looks[(chosen() + 1) % looks.length].name;
  document.documentElement.dataset.look = look;
  showLook();
  await asked('/remember', { look });
}
