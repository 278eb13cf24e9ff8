/// The web: office pages for the desk, the field page for the phone, and the HTTP API that both use.
///
/// It knows `core`, draws with `sheet`, and keeps what is recorded with `store`. Nothing is worked out here that the stages
/// work out.
///
/// **Addresses.** `/` office pages; `/field/` the field page (files under `resources/sillwright/page/field/`, so that a
/// service worker there has `/field/` as its scope); `/looks/` the style sheet both share, and `/fonts/`; `/api/` the API.
/// No page may hold a script or a style of its own: the Content-Security-Policy forbids them, and every other machine.
///
/// **The API.** JSON in UTF-8. What is refused is answered with a 4xx and
/// `{"error":{"where":...,"what":...,"mend":...}}`; what fails here, in the same form with 500, or 503 where the book cannot be read or written and
/// asking again later will do. Whatever changes something must be sent as `application/json` (a photo
/// as `image/*`), from this server's own pages or from a program that is none. `/api/openapi.json` describes all of it.
///
/// - `GET /api/buildings`: `{"buildings":[{"id","name","entries","last"}]}`; `name` is empty until a description arrived.
/// - `GET /api/buildings/{id}/entries?since=MARK&limit=N`: what arrived after a mark, oldest first:
///   `{"entries":[...],"mark":"12.0a1b...","more":false,"again":false,"faults":[...]}`. An entry is exactly an entry of the exchange
///   file. Leave `since` out to begin; give back `mark` as it came. `more`: ask again at once. `again`: the mark fitted
///   nothing here (a restored backup), so this begins from the first entry. `limit` is 1 to 10,000, 1,000 where left out.
/// - `POST /api/buildings/{id}/entries` with a JSON array of entries, at most 1,000 and 8 MB:
///   `{"receipts":[{"id","fate":"taken"|"known"|"refused","faults":[{"entry","field","what","mend"}]}]}`, in the order sent. When
///   the answer arrives, all that is `taken` or `known` is durable. Sending again is safe: it is `known`. What is
///   `refused` is set aside at the server as it came; mend it and send it with a new id.
/// - `GET /api/buildings/{id}/photos`: `{"photos":[{"file","sha256"}],"missing":[file,...]}`: `missing` are those that entries name and
///   nobody sent yet.
/// - `HEAD`, `GET`, `PUT /api/photos/{sha256}`: a JPEG, PNG or WebP picture, at most 32 MB and 100 million points, by the SHA-256 of its bytes,
///   64 hex digits in lower case. `PUT` answers 201 where it is new, 200 where it was here; durable either way. An entry names it
///   `photos/SHA256.jpg` (or `.png`, `.webp`).
/// - `GET /api/figures`, `GET /api/figure/{name}?key=value&units=us|si`: the same answer as `sillwright figure NAME --json`.
///   `POST /api/figure/{name}` with `{"values":{key:text},"files":{name:contents},"units":"us"}` where a key names a file.
package sillwright.page;
