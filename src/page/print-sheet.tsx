import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { layOutPieces } from '../output/pieces';
import { writeShopSheet } from '../output/shop-sheet';
import { STYLE } from '../output/shop-sheet/style';
import { tables, type Form } from './work';

/** What is printed is the shop sheet: made when the page is about to be printed, shown on paper only, in a tree of its own so that neither's style touches the other. */
export function PrintSheet({ write }: { write: () => string }): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const fill = (): void => {
      const host = holder.current;
      if (!host) return;
      const shadow = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
      const style = new CSSStyleSheet();
      style.replaceSync(STYLE.replace(/^html \{/mu, ':host {').replace(/^body \{/mu, '.body {'));
      shadow.adoptedStyleSheets = [style];
      // Its style is adopted above; read with the sheet it would offend the page's policy.
      const sheet = write().replace(/<style>.*?<\/style>/su, '');
      const page = new DOMParser().parseFromString(sheet, 'text/html');
      const body = document.createElement('div');
      body.className = 'body';
      body.append(...page.body.childNodes);
      shadow.replaceChildren(body);
    };
    addEventListener('beforeprint', fill);
    return () => removeEventListener('beforeprint', fill);
  }, [write]);
  return <div class="paper" ref={holder} />;
}

/** A form's shop sheet. */
export function sheetOf({ parts, planned }: Form): string {
  return writeShopSheet(planned, { parts, boards: layOutPieces(parts, planned, tables) }, tables);
}
