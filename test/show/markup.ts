import type { DefaultTreeAdapterMap } from "parse5";

type Node = DefaultTreeAdapterMap["node"];

const children = (node: Node): readonly Node[] => ("childNodes" in node ? node.childNodes : []);

/** What a reader sees of a parsed node: its text, where a `br` ends a line and a bare line end is a space. */
export function textOf(node: Node): string {
  if (node.nodeName === "br") return "\n";
  return "value" in node && node.nodeName === "#text"
    ? node.value.replaceAll("\n", " ")
    : children(node).map(textOf).join("");
}

/** The elements inside a parsed node, in order; only those of the names given, if any are. */
export function elements(node: Node, ...names: readonly string[]): Node[] {
  return children(node).flatMap((child) => {
    const own = !child.nodeName.startsWith("#") && (names.length === 0 || names.includes(child.nodeName));
    return [...(own ? [child] : []), ...elements(child, ...names)];
  });
}
