/** As much of a document as drawing needs: elements with attributes and children, texts, and nothing of layout or events. */
export class TinyNode {
  parentNode: TinyNode | null = null;
  readonly childNodes: TinyNode[] = [];
  readonly attributes = new Map<string, string>();
  readonly style: Record<string, unknown> = { setProperty: () => {} };
  readonly nodeType: number;
  readonly localName: string;
  readonly namespaceURI: string | null;
  data: string;

  constructor(localName: string, namespaceURI: string | null, data = '') {
    this.nodeType = localName === '#text' ? 3 : 1;
    this.localName = localName;
    this.namespaceURI = namespaceURI;
    this.data = data;
  }

  get ownerDocument(): unknown {
    return tinyDocument;
  }
  get firstChild(): TinyNode | null {
    return this.childNodes[0] ?? null;
  }
  get nextSibling(): TinyNode | null {
    const beside = this.parentNode?.childNodes ?? [];
    return beside[beside.indexOf(this) + 1] ?? null;
  }
  contains(other: TinyNode | null): boolean {
    return other !== null && (other === this || this.contains(other.parentNode));
  }
  insertBefore(child: TinyNode, before: TinyNode | null): TinyNode {
    child.remove();
    const at = before === null ? this.childNodes.length : this.childNodes.indexOf(before);
    this.childNodes.splice(at, 0, child);
    child.parentNode = this;
    return child;
  }
  appendChild(child: TinyNode): TinyNode {
    return this.insertBefore(child, null);
  }
  removeChild(child: TinyNode): TinyNode {
    child.remove();
    return child;
  }
  remove(): void {
    const beside = this.parentNode?.childNodes;
    beside?.splice(beside.indexOf(this), 1);
    this.parentNode = null;
  }
  setAttribute(name: string, value: unknown): void {
    this.attributes.set(name, String(value));
  }
  removeAttribute(name: string): void {
    this.attributes.delete(name);
  }
  addEventListener(): void {}
  removeEventListener(): void {}
  querySelector(): null {
    return null;
  }
  focus(): void {}
}

const tinyDocument = {
  createElementNS: (namespace: string, name: string) => new TinyNode(name, namespace),
  createElement: (name: string) => new TinyNode(name, null),
  createTextNode: (text: string) => new TinyNode('#text', null, text),
  documentElement: { lang: 'xx', dataset: {} },
  addEventListener: () => {},
  removeEventListener: () => {},
  getElementById: () => null,
  activeElement: null,
};

/** Puts the document where the page's parts look for it. */
export function useTinyDocument(): void {
  Object.assign(globalThis, {
    document: tinyDocument,
    navigator: { language: 'xx' },
    location: { reload: () => {} },
    isSecureContext: true,
    HTMLInputElement: class {},
    HTMLTextAreaElement: class {},
    addEventListener: () => {},
    removeEventListener: () => {},
  });
}

const readAttributes = ['aria-label', 'aria-description', 'title', 'placeholder', 'alt', 'aria-roledescription'];

/** Everything that a person reads or hears of a part of the page: its texts, and the attributes that are read out. */
export function readTexts(node: TinyNode): string[] {
  if (node.nodeType === 3) return String(node.data).trim() === '' ? [] : [String(node.data)];
  const own = readAttributes.flatMap((name) => node.attributes.get(name) ?? []);
  return [...own, ...node.childNodes.flatMap(readTexts)];
}
