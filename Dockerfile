# The lock files hold for the SDK of this version; see docs/deployment.md before changing it.
ARG SDK=mcr.microsoft.com/dotnet/sdk:10.0.401
ARG BASE=mcr.microsoft.com/dotnet/aspnet:10.0

# What decides which packages are restored, and nothing else: a change in the code leaves this stage's result,
# and so the restored layers below, as they were.
FROM ${SDK} AS manifests
COPY src /manifests
RUN find /manifests -type f ! -name '*.csproj' ! -name '*.props' ! -name 'packages.lock.json' -delete \
 && find /manifests -type d -empty -delete

FROM ${SDK} AS build
ARG RID=linux-x64
WORKDIR /build
COPY --from=manifests /manifests src
RUN dotnet restore src/RubLab.Api --locked-mode
# Machine code ahead of time, for the API alone: on the command line these properties would reach the page too, and
# a WebAssembly project cannot take them. The second restore adds the compiler; the lock file has checked the rest.
RUN printf '%s\n' \
      '<Project>' \
      '  <Import Project="../Directory.Build.props" />' \
      '  <PropertyGroup>' \
      "    <RuntimeIdentifier>${RID}</RuntimeIdentifier>" \
      '    <SelfContained>false</SelfContained>' \
      '    <PublishReadyToRun>true</PublishReadyToRun>' \
      '  </PropertyGroup>' \
      '</Project>' > src/RubLab.Api/Directory.Build.props \
 && dotnet restore src/RubLab.Api -p:Configuration=Release
COPY .editorconfig ./
COPY seed-data seed-data
COPY src src
RUN dotnet publish src/RubLab.Api --no-restore --configuration Release --output /out/app \
 && chmod -R u=rwX,go=rX /out/app \
 && mkdir /out/data

# No command runs in this stage, so a base without a shell will do.
FROM ${BASE}
COPY --from=build /out/app /app
COPY --from=build --chown=10001:10001 /out/data /data
WORKDIR /app
ENV ASPNETCORE_URLS=http://0.0.0.0:8080 \
    ASPNETCORE_HTTP_PORTS= \
    RUBLAB_DATA=/data/rublab.db
USER 10001:10001
VOLUME /data
EXPOSE 8080
HEALTHCHECK --interval=30s --timeout=5s --start-period=20s --retries=3 \
  CMD ["dotnet", "/app/RubLab.Api.dll", "--health", "http://127.0.0.1:8080/health"]
ENTRYPOINT ["dotnet", "/app/RubLab.Api.dll"]
