import { serve } from "./service.js";

const server = serve("recipes");
server.listen(0, "127.0.0.1", () => {
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("no port");
  fetch(`http://127.0.0.1:${address.port}/`)
    .then((response) => response.text())
    .then((text) => {
      console.log(text);
      server.close();
    })
    .catch((error: unknown) => {
      throw error;
    });
});
