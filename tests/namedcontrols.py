"""What a screen reader cannot name in a page."""

from __future__ import annotations

NAMELESS = """() => { const bad = [];
for (const n of document.querySelectorAll('button, a[href], input, select, summary, [role=slider], [tabindex="0"]')) {
  if (n.closest('[hidden],[aria-hidden=true]') || getComputedStyle(n).display === 'none') continue;
  const by = (n.getAttribute('aria-labelledby') || '').split(' ').map(i => document.getElementById(i)?.textContent || '').join('');
  const label = n.labels && [...n.labels].map(l => l.textContent).join('');
  if (!(n.getAttribute('aria-label') || by || label || n.textContent || n.title || '').trim()) bad.push(n.outerHTML.slice(0, 90));
} return bad; }"""


def unnamed(page):
    """Controls that a screen reader could only call by their kind."""
    return page.tab.evaluate(NAMELESS)
