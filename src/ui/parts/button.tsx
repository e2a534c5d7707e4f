import type { ButtonHTMLAttributes, ComponentChildren } from 'preact';

interface ButtonProps extends Omit<ButtonHTMLAttributes<HTMLButtonElement>, 'size' | 'icon'> {
  /** `main` is the one likely next action of a screen. */
  look?: 'main' | 'plain' | 'quiet' | 'danger';
  children: ComponentChildren;
}

export function Button({ look = 'plain', children, type = 'button', class: extra, ...rest }: ButtonProps) {
  return (
    <button type={type} class={`button button-${look} ${extra ?? ''}`} {...rest}>
      {children}
    </button>
  );
}

export function LinkButton({
  look = 'plain',
  href,
  children,
}: {
  look?: 'main' | 'plain' | 'quiet';
  href: string;
  children: ComponentChildren;
}) {
  return (
    <a class={`button button-${look}`} href={href}>
      {children}
    </a>
  );
}
