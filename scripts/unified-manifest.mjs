import { DOMParser } from '@xmldom/xmldom';

// The platform wants an id of its own (its documentation, "Manage both a unified manifest and an add-in only manifest
// version of your Office Add-in"); never changed once shipped.
const ID = 'c4d1f0a7-6e52-4b93-8a1f-57b0e3d96c28';
const SCHEMA_VERSION = '1.30';
/** Names of permissions (platform documentation, "Requesting permissions for API use in add-ins"). */
const PERMISSIONS = { ReadWriteDocument: 'Document.ReadWrite.User' };
const SCOPES = { Workbook: 'workbook' };
const OPEN = 'openPane';

/**
 * The unified manifest that says the same as an add-in only manifest: no value is written twice.
 * @param {string} text the add-in only manifest, as it is built
 * @returns {object} the unified manifest
 */
export function unifiedManifest(text) {
  const xml = new DOMParser().parseFromString(text, 'text/xml');
  const all = (name, within = xml) => [...within.getElementsByTagName(name)];
  const first = (name, within) => all(name, within)[0];
  const content = (name) => first(name).textContent;
  const value = (name) => first(name).getAttribute('DefaultValue');
  const resources = new Map(
    ['bt:Image', 'bt:Url', 'bt:String']
      .flatMap((name) => all(name))
      .map((each) => [each.getAttribute('id'), each.getAttribute('DefaultValue')]),
  );
  const resource = (element) => resources.get(element.getAttribute('resid'));
  const icons = (within) =>
    all('bt:Image', first('Icon', within)).map((image) => ({
      size: Number(image.getAttribute('size')),
      url: resource(image),
    }));
  const functions = all('ExtensionPoint')[0];
  const [group, button, started] = ['Group', 'Control', 'GetStarted'].map((name) => first(name));
  const pane = resource(first('Runtime'));
  const support = value('SupportUrl');
  const namespace = resource(first('Namespace', functions));
  // A version has three parts here; those that `npm run package` raises are the last two.
  const [major, , ...raised] = content('Version').split('.');
  return {
    $schema: `https://developer.microsoft.com/json-schemas/teams/v${SCHEMA_VERSION}/MicrosoftTeams.schema.json`,
    manifestVersion: SCHEMA_VERSION,
    id: ID,
    version: [major, ...raised].join('.'),
    name: { short: value('DisplayName'), full: value('DisplayName') },
    description: { short: value('Description'), full: value('Description') },
    developer: {
      name: content('ProviderName'),
      websiteUrl: support,
      privacyUrl: new URL('privacy.html', support).href,
      termsOfUseUrl: support,
    },
    icons: { outline: 'assets/outline-32.png', color: 'assets/icon-192.png' },
    accentColor: '#A6523C',
    localizationInfo: { defaultLanguageTag: content('DefaultLocale').toLowerCase() },
    authorization: {
      permissions: {
        resourceSpecific: [{ name: PERMISSIONS[content('Permissions')], type: 'Delegated' }],
      },
    },
    extensions: [
      {
        requirements: {
          scopes: all('Host', first('Hosts')).map((host) => SCOPES[host.getAttribute('Name')]),
          capabilities: all('Set').map((set) => ({
            name: set.getAttribute('Name'),
            minVersion: set.getAttribute('MinVersion'),
          })),
        },
        runtimes: [
          {
            id: 'shared',
            type: 'general',
            code: { page: pane, script: resource(first('SourceLocation', first('Script', functions))) },
            lifetime: first('Runtime').getAttribute('lifetime'),
            actions: [{ id: OPEN, type: 'openPage', view: content('TaskpaneId') }],
            // All else is said by functions.json, which has what this schema has no word for: that errors are taken.
            customFunctions: {
              namespace: { id: namespace, name: namespace },
              metadataUrl: resource(first('SourceLocation', first('Metadata', functions))),
            },
          },
        ],
        ribbons: [
          {
            contexts: ['default'],
            tabs: [
              {
                builtInTabId: first('OfficeTab').getAttribute('id'),
                groups: [
                  {
                    id: group.getAttribute('id'),
                    label: resource(first('Label', group)),
                    icons: icons(group),
                    controls: [
                      {
                        id: button.getAttribute('id'),
                        type: 'button',
                        label: resource(first('Label', button)),
                        icons: icons(button),
                        supertip: {
                          title: resource(first('Title', button)),
                          description: resource(first('Description', button)),
                        },
                        actionId: OPEN,
                      },
                    ],
                  },
                ],
              },
            ],
          },
        ],
        getStartedMessages: [
          {
            title: resource(first('Title', started)),
            description: resource(first('Description', started)),
            learnMoreUrl: resource(first('LearnMoreUrl', started)),
          },
        ],
        // Where both are there, the other one steps back.
        alternates: [{ hide: { customOfficeAddin: { officeAddinId: content('Id') } } }],
      },
    ],
  };
}
