// The runtime: it takes longest to come, so it is sent for before the rest of the page.

export const runtime = import('../_framework/dotnet.js').then(({ dotnet }) => dotnet.create());
