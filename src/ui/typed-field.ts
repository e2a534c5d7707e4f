type TextField = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

/** A field as it stood before a scanner typed into it. */
export interface Before {
  readonly field: Element | null;
  readonly putBack: () => void;
}

function isTextField(element: Element | null): element is TextField {
  return element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement || element instanceof HTMLSelectElement;
}

/** Remembers what has the focus and what it holds. */
export function asItStands(): Before {
  const field = document.activeElement;
  if (!isTextField(field)) return { field, putBack: () => undefined };
  const { value } = field;
  return {
    field,
    putBack() {
      if (field.value === value) return;
      field.value = value;
      // Whoever follows the field has to hear of it as if it were typed.
      field.dispatchEvent(new Event(field instanceof HTMLSelectElement ? 'change' : 'input', { bubbles: true }));
    },
  };
}
