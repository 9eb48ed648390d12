/** The frame of the page to print: shows what the app hands it, and prints it. A script in it would not run. */
addEventListener("message", ({ origin, data }: MessageEvent<unknown>) => {
  if (origin !== location.origin || typeof data !== "string") return;
  const page = new DOMParser().parseFromString(data, "text/html");
  document.documentElement.replaceWith(document.adoptNode(page.documentElement));
  print();
});
