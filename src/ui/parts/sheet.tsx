import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Icon } from './icon.tsx';

/** Slides over the screen on a phone, stands in its middle on a desk; Escape and a tap outside close it. */
export function Sheet({ title, onClose, children }: { title: string; onClose: () => void; children: ComponentChildren }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const close = useRef(onClose);
  close.current = onClose;
  useEffect(() => {
    const element = dialog.current;
    const tapOutside = (event: MouseEvent) => {
      if (event.target === element) close.current();
    };
    element?.showModal();
    element?.addEventListener('click', tapOutside);
    return () => {
      element?.removeEventListener('click', tapOutside);
      element?.close();
    };
  }, []);
  return (
    <dialog
      ref={dialog}
      class="sheet"
      aria-label={title}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <div class="sheet-inner">
        <div class="sheet-head">
          <h2>{title}</h2>
          <button type="button" class="icon-button" aria-label="Close" onClick={onClose}>
            <Icon name="close" />
          </button>
        </div>
        {children}
      </div>
    </dialog>
  );
}
