/**
 * The one script of the read-only page: a line that is moved over the curves, and what stands at it. It reads words
 * and places that the page carries and computes nothing. Without it the page has all its figures.
 */
export const levelScript = `(() => {
  const { start, levels } = JSON.parse(document.getElementById("levels").textContent);
  const input = document.getElementById("level");
  const reading = document.getElementById("reading");
  const told = document.getElementById("read-off");
  const lines = document.querySelectorAll("[data-line]");
  const show = () => {
    const at = levels[Number(input.value)];
    reading.textContent = at.words;
    told.textContent = at.limits;
    input.setAttribute("aria-valuetext", at.words);
    for (const line of lines) {
      line.hidden = Number(input.value) === start;
      line.style.left = at[line.dataset.line] + "%";
    }
  };
  input.addEventListener("input", show);
  input.max = String(levels.length - 1);
  input.value = String(start);
  document.getElementById("mover").hidden = false;
  show();
})();`;

/** SHA-256 of the script, as a content policy names it. A test recomputes it. */
export const levelScriptHash = "sha256-K6TfpjyT9oYviChpU3FNZo4Gs0c5Qx1DiaPidAAUVyM=";
