// The little that a page must do by itself: undo and redo by keyboard. Everything else is done by the server.
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  const wanted = key === "z" ? (event.shiftKey ? "redo" : "undo") : key === "y" ? "redo" : null;
  if (!wanted || event.target.closest?.("input:not([type=checkbox]), textarea, [contenteditable]")) return;
  event.preventDefault();
  document.querySelector(`[data-do=${wanted}]:not([disabled])`)?.click();
});

// A part in a drawing leads to its values.
document.addEventListener("click", (event) => {
  const item = event.target.closest?.(".drawing [data-item]")?.dataset.item;
  if (item === undefined) return;
  const plain = /^[\p{L}_$][\p{L}\p{N}_$]*$/u.test(item);
  const name = plain ? `.${item}` : `['${item.replace(/[\\']/g, "\\$&")}']`;
  Blazor.navigateTo(`/plant?field=${encodeURIComponent(`$.plant.items${name}`)}`);
});
