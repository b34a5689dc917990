// Asks for the code that lets this device in.
import { showFaults } from '../bench/faults.js';
import { button, byId, field, make } from '../dom.js';
import { say } from '../words/texts.js';

const triesBeforeAdvice = 3;

export function entryOf(app) {
  let tries = 0;
  const code = make('input', { name: 'code', class: 'code-entry', autocomplete: 'one-time-code', autocapitalize: 'characters', spellcheck: 'false', maxlength: 40 });
  const name = make('input', { name: 'name', autocomplete: 'off', maxlength: 100 });
  const form = make('form', { class: 'card', novalidate: true, 'aria-label': say('pairing.enter') },
    make('p', null, say('pairing.how')),
    field('pairing-code', say('pairing.code'), code, { hint: say('pairing.code.hint') }),
    field('pairing-name', say('pairing.name'), name, { hint: say('pairing.name.hint') }),
    button(say('pairing.pair'), submit, { class: 'main', id: 'pairing-pair' }),
    make('p', { id: 'pairing-said', role: 'status' }));
  form.addEventListener('submit', event => {
    event.preventDefault();
    submit();
  });
  return form;

  async function submit() {
    const pair = byId('pairing-pair');
    if (pair.disabled) {
      return;
    }
    pair.disabled = true;
    byId('pairing-said').textContent = '';
    try {
      await app.access.pair(code.value, name.value.trim());
    } catch (fault) {
      tell(fault);
    } finally {
      pair.disabled = false;
    }
  }

  function tell(fault) {
    const errors = fault.problem?.errors ?? [];
    const faults = errors.map(({ pointer, detail }) => ({ field: pointer === '/name' ? 'pairing-name' : 'pairing-code', detail }));
    showFaults(form, faults);
    tries += errors.some(error => error.code === 'code-not-open') ? 1 : 0;
    byId('pairing-said').textContent = fault.status === 429 ? say('pairing.wait', { seconds: fault.retryAfter })
      : fault.status === 403 ? say('pairing.notHere')
        : fault.status === undefined ? say('pairing.offline')
          : faults.length === 0 ? say('pairing.refused', { status: fault.status })
            : tries >= triesBeforeAdvice ? say('pairing.newOne') : '';
    if (faults.length > 0) {
      byId(faults[0].field).focus();
    }
  }
}
