import type { ComponentChildren } from 'preact';
import type { Problem } from '../../domain/problem.ts';
import { Shape } from './shape.tsx';

/** What went wrong and what was kept. */
export function ProblemNote({ problem }: { problem: Problem }) {
  return (
    <div class="note note-problem" role="alert">
      <Shape name="care" />
      <p>
        <strong>{problem.says}</strong> {problem.kept}
      </p>
    </div>
  );
}

/** The usual caution of a piece of work that can hurt someone. */
export function Caution({ children }: { children: ComponentChildren }) {
  return (
    <div class="note note-caution">
      <Shape name="worn" />
      <p>{children}</p>
    </div>
  );
}

/** What belongs on an empty screen, and the first step. */
export function Empty({ title, children, actions }: { title: string; children?: ComponentChildren; actions?: ComponentChildren }) {
  return (
    <div class="empty">
      <h2>{title}</h2>
      {children}
      {actions && <div class="empty-actions">{actions}</div>}
    </div>
  );
}
