// Shows the OpenAPI document of this very service; asks nothing of any other.
window.addEventListener("load", () => {
  window.SwaggerUIBundle({
    dom_id: "#reference",
    url: "/openapi.json",
    validatorUrl: "none",
    deepLinking: true,
    defaultModelsExpandDepth: 0,
    displayOperationId: true,
    tryItOutEnabled: true,
  });
});
