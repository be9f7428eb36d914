// The little that a page must do by itself: undo and redo by keyboard. Everything else is done by the server.
document.addEventListener("keydown", (event) => {
  if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
  const key = event.key.toLowerCase();
  const wanted = key === "z" ? (event.shiftKey ? "redo" : "undo") : key === "y" ? "redo" : null;
  if (!wanted || event.target.closest?.("input:not([type=checkbox]), textarea, [contenteditable]")) return;
  event.preventDefault();
  document.querySelector(`[data-do=${wanted}]:not([disabled])`)?.click();
});
