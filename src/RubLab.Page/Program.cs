using System.Runtime.Versioning;

[assembly: SupportedOSPlatform("browser")]

// The page's script calls the exported functions; nothing runs by itself.
return;
