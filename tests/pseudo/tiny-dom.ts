/** As much of a node as drawing needs: attributes, children, text, and nothing of layout or events. */
export interface TinyNode {
  readonly nodeType: number;
  readonly localName: string;
  readonly namespaceURI: string | null;
  readonly childNodes: TinyNode[];
  readonly attributes: Map<string, string>;
  parentNode: TinyNode | null;
  /** What a text says. */
  data: unknown;
  readonly remove: () => void;
}

/** A new element, or a text where it is named "#text". */
export function tinyNode(localName: string, namespaceURI: string | null = null, data = ''): TinyNode {
  const childNodes: TinyNode[] = [];
  const attributes = new Map<string, string>();
  const besides = () => node.parentNode?.childNodes ?? [];
  const insertBefore = (child: TinyNode, before: TinyNode | null): TinyNode => {
    child.remove();
    childNodes.splice(before === null ? childNodes.length : childNodes.indexOf(before), 0, child);
    child.parentNode = node;
    return child;
  };
  const node = {
    nodeType: localName === '#text' ? 3 : 1,
    localName,
    namespaceURI,
    childNodes,
    attributes,
    parentNode: null as TinyNode | null,
    data,
    style: { setProperty: () => {} },
    get ownerDocument() {
      return tinyDocument;
    },
    get firstChild() {
      return childNodes[0] ?? null;
    },
    get nextSibling() {
      return besides()[besides().indexOf(node) + 1] ?? null;
    },
    insertBefore,
    appendChild: (child: TinyNode) => insertBefore(child, null),
    removeChild: (child: TinyNode) => {
      child.remove();
      return child;
    },
    remove: () => {
      if (node.parentNode) besides().splice(besides().indexOf(node), 1);
      node.parentNode = null;
    },
    contains: (other: TinyNode | null): boolean =>
      other === node || (other !== null && node.contains(other.parentNode)),
    setAttribute: (name: string, value: unknown) => void attributes.set(name, String(value)),
    removeAttribute: (name: string) => void attributes.delete(name),
    addEventListener: () => {},
    removeEventListener: () => {},
    querySelector: () => null,
    focus: () => {},
  };
  return node;
}

const tinyDocument = {
  createElementNS: (namespace: string, name: string) => tinyNode(name, namespace),
  createElement: (name: string) => tinyNode(name),
  createTextNode: (text: string) => tinyNode('#text', null, text),
  documentElement: { lang: 'zz', dataset: {} },
  addEventListener: () => {},
  removeEventListener: () => {},
  getElementById: () => null,
  activeElement: null,
};

/** Puts the document where the page's parts look for it. */
export function useTinyDocument(): void {
  Object.assign(globalThis, {
    document: tinyDocument,
    navigator: { language: 'zz' },
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
