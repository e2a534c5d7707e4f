import type { ComponentChildren } from 'preact';
import { isShown } from '../router.ts';

/** One thing in a list: a tap opens it. */
export function ThingRow({
  href,
  title,
  detail,
  marks,
  picture,
}: {
  href: string;
  title: string;
  detail?: string;
  marks?: ComponentChildren;
  picture?: ComponentChildren;
}) {
  return (
    <li class="row">
      <a href={href} class="row-link" aria-current={isShown(href)}>
        {picture && <span class="row-picture">{picture}</span>}
        <span class="row-words">
          <span class="row-title">{title}</span>
          {detail && <span class="row-detail">{detail}</span>}
          {marks && <span class="row-marks">{marks}</span>}
        </span>
      </a>
    </li>
  );
}
