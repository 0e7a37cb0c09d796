"""The OpenAPI document, its examples, and the pages made from them."""
