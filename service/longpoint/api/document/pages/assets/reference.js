// Lets a reader send a request to this very service and see its answer; asks nothing of any other.
addEventListener("DOMContentLoaded", () => {
  for (const here of document.querySelectorAll(".here")) here.textContent = location.origin;
  const key = document.querySelector(".key");
  key.hidden = false;
  key.addEventListener("submit", (event) => event.preventDefault());
  for (const shown of document.querySelectorAll("article .body")) {
    const article = shown.closest("article");
    const [method, path] = article.querySelector(".address").textContent.replaceAll("\u200b", "").split(" ");
    if (path.includes("{")) continue;
    const body = document.createElement("textarea");
    body.value = shown.textContent;
    body.rows = Math.min(20, body.value.split("\n").length);
    body.spellcheck = false;
    body.setAttribute("aria-label", `What to send to ${path}`);
    const send = Object.assign(document.createElement("button"), { type: "button", textContent: "Send it" });
    const answer = Object.assign(document.createElement("pre"), { hidden: true, tabIndex: 0 });
    answer.setAttribute("aria-live", "polite");
    send.addEventListener("click", async () => {
      const headers = { "content-type": "application/json", accept: "application/json" };
      const word = key.querySelector("input").value.trim();
      if (word) headers.authorization = `Bearer ${word}`;
      answer.hidden = false;
      try {
        const found = await fetch(path, { method, headers, body: body.value });
        const text = await found.text();
        let lines = text;
        try { lines = JSON.stringify(JSON.parse(text), null, 2); } catch { /* a file, shown as it is */ }
        answer.textContent = `${found.status}\n${lines}`;
      } catch (error) {
        answer.textContent = `The service did not answer: ${error.message}`;
      }
    });
    shown.replaceWith(body, send, answer);
  }
});
