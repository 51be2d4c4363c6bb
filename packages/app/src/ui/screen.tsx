import type { ComponentChildren } from "preact";
import { useEffect, useRef } from "preact/hooks";
import { Link } from "wouter-preact";

interface ScreenProps {
  readonly title: string;
  /** Short words at the right of the title. */
  readonly aside?: ComponentChildren;
  readonly back?: { readonly to: string; readonly words: string };
  /** The three things at the thumb. */
  readonly bar?: ComponentChildren;
  /** Columns side by side where there is room. */
  readonly wide?: boolean;
  readonly children: ComponentChildren;
}

/** One screen: its title says which question it answers. The title takes the focus when the screen opens. */
export function Screen({ title, aside, back, bar, wide, children }: ScreenProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${title} · Jetwright`;
    heading.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, [title]);
  return (
    <>
      <main class={wide ? "screen wide" : "screen"}>
        {back && (
          <Link class="back" href={back.to}>
            ← {back.words}
          </Link>
        )}
        <header>
          <h1 ref={heading} tabIndex={-1}>
            {title}
          </h1>
          {aside !== undefined && <span class="aside">{aside}</span>}
        </header>
        {children}
      </main>
      {bar !== undefined && <nav class="bar">{bar}</nav>}
    </>
  );
}
