using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace PatternStudio.Studio.Data.Migrations.Postgres
{
    /// <inheritdoc />
    public partial class Workroom : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Designs_StudioId_Updated",
                table: "Designs");

            migrationBuilder.AddColumn<string>(
                name: "Name",
                table: "Versions",
                type: "character varying(80)",
                maxLength: 80,
                nullable: false,
                defaultValue: "");

            migrationBuilder.CreateTable(
                name: "CorrectionPages",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    DesignId = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_CorrectionPages", x => x.Id);
                    table.ForeignKey(
                        name: "FK_CorrectionPages_Designs_DesignId",
                        column: x => x.DesignId,
                        principalTable: "Designs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Corrections",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    DesignId = table.Column<Guid>(type: "uuid", nullable: false),
                    On = table.Column<DateOnly>(type: "date", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    Words = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Corrections", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Corrections_Versions_DesignId_Version",
                        columns: x => new { x.DesignId, x.Version },
                        principalTable: "Versions",
                        principalColumns: new[] { "DesignId", "Number" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "DesignFaces",
                columns: table => new
                {
                    DesignId = table.Column<Guid>(type: "uuid", nullable: false),
                    Words = table.Column<string>(type: "text", nullable: false),
                    Picture = table.Column<byte[]>(type: "bytea", nullable: true),
                    Sizes = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    Notes = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DesignFaces", x => x.DesignId);
                    table.ForeignKey(
                        name: "FK_DesignFaces_Designs_DesignId",
                        column: x => x.DesignId,
                        principalTable: "Designs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Drafts",
                columns: table => new
                {
                    DesignId = table.Column<Guid>(type: "uuid", nullable: false),
                    AccountId = table.Column<Guid>(type: "uuid", nullable: false),
                    Writer = table.Column<Guid>(type: "uuid", nullable: false),
                    Text = table.Column<string>(type: "text", nullable: false),
                    BasedOn = table.Column<int>(type: "integer", nullable: false),
                    At = table.Column<DateTime>(type: "timestamp with time zone", nullable: false),
                    Place = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Drafts", x => new { x.DesignId, x.AccountId, x.Writer });
                    table.ForeignKey(
                        name: "FK_Drafts_Accounts_AccountId",
                        column: x => x.AccountId,
                        principalTable: "Accounts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_Drafts_Designs_DesignId",
                        column: x => x.DesignId,
                        principalTable: "Designs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Preferences",
                columns: table => new
                {
                    AccountId = table.Column<Guid>(type: "uuid", nullable: false),
                    Lengths = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    Decimals = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    Dates = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    LeftHanded = table.Column<bool>(type: "boolean", nullable: false),
                    TourDone = table.Column<bool>(type: "boolean", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Preferences", x => x.AccountId);
                    table.ForeignKey(
                        name: "FK_Preferences_Accounts_AccountId",
                        column: x => x.AccountId,
                        principalTable: "Accounts",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Tags",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    StudioId = table.Column<Guid>(type: "uuid", nullable: false),
                    Name = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false),
                    NameKey = table.Column<string>(type: "character varying(40)", maxLength: 40, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Tags", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Tags_Studios_StudioId",
                        column: x => x.StudioId,
                        principalTable: "Studios",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "TestRounds",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    DesignId = table.Column<Guid>(type: "uuid", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    VersionBefore = table.Column<int>(type: "integer", nullable: true),
                    Opens = table.Column<DateOnly>(type: "date", nullable: false),
                    Ends = table.Column<DateOnly>(type: "date", nullable: false),
                    Testers = table.Column<int>(type: "integer", nullable: false),
                    Sizes = table.Column<string>(type: "character varying(400)", maxLength: 400, nullable: false),
                    Asked = table.Column<int>(type: "integer", nullable: false),
                    ShowsChart = table.Column<bool>(type: "boolean", nullable: false),
                    Note = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    Created = table.Column<DateTime>(type: "timestamp with time zone", nullable: false),
                    Ended = table.Column<DateTime>(type: "timestamp with time zone", nullable: true),
                    RowVersion = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TestRounds", x => x.Id);
                    table.ForeignKey(
                        name: "FK_TestRounds_Versions_DesignId_Version",
                        columns: x => new { x.DesignId, x.Version },
                        principalTable: "Versions",
                        principalColumns: new[] { "DesignId", "Number" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "DesignTags",
                columns: table => new
                {
                    DesignId = table.Column<Guid>(type: "uuid", nullable: false),
                    TagId = table.Column<Guid>(type: "uuid", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_DesignTags", x => new { x.DesignId, x.TagId });
                    table.ForeignKey(
                        name: "FK_DesignTags_Designs_DesignId",
                        column: x => x.DesignId,
                        principalTable: "Designs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_DesignTags_Tags_TagId",
                        column: x => x.TagId,
                        principalTable: "Tags",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "Testers",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    RoundId = table.Column<Guid>(type: "uuid", nullable: false),
                    Name = table.Column<string>(type: "character varying(80)", maxLength: 80, nullable: false),
                    Size = table.Column<int>(type: "integer", nullable: true),
                    Added = table.Column<DateTime>(type: "timestamp with time zone", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Testers", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Testers_TestRounds_RoundId",
                        column: x => x.RoundId,
                        principalTable: "TestRounds",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "ShareLinks",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    RoundId = table.Column<Guid>(type: "uuid", nullable: false),
                    TesterId = table.Column<Guid>(type: "uuid", nullable: true),
                    TokenHash = table.Column<byte[]>(type: "bytea", maxLength: 32, nullable: false),
                    Created = table.Column<DateTime>(type: "timestamp with time zone", nullable: false),
                    Expires = table.Column<DateTime>(type: "timestamp with time zone", nullable: false),
                    Revoked = table.Column<DateTime>(type: "timestamp with time zone", nullable: true),
                    MostReports = table.Column<int>(type: "integer", nullable: false),
                    Reports = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_ShareLinks", x => x.Id);
                    table.ForeignKey(
                        name: "FK_ShareLinks_TestRounds_RoundId",
                        column: x => x.RoundId,
                        principalTable: "TestRounds",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_ShareLinks_Testers_TesterId",
                        column: x => x.TesterId,
                        principalTable: "Testers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateTable(
                name: "TesterReports",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    RoundId = table.Column<Guid>(type: "uuid", nullable: false),
                    TesterId = table.Column<Guid>(type: "uuid", nullable: false),
                    Version = table.Column<int>(type: "integer", nullable: false),
                    Size = table.Column<int>(type: "integer", nullable: false),
                    Stitches = table.Column<double>(type: "double precision", nullable: true),
                    Rows = table.Column<double>(type: "double precision", nullable: true),
                    OverMetres = table.Column<double>(type: "double precision", nullable: true),
                    StitchesBefore = table.Column<double>(type: "double precision", nullable: true),
                    RowsBefore = table.Column<double>(type: "double precision", nullable: true),
                    HookMetres = table.Column<double>(type: "double precision", nullable: true),
                    Yarn = table.Column<string>(type: "character varying(200)", maxLength: 200, nullable: false),
                    YarnKilograms = table.Column<double>(type: "double precision", nullable: true),
                    BallMetres = table.Column<double>(type: "double precision", nullable: true),
                    BallKilograms = table.Column<double>(type: "double precision", nullable: true),
                    WidthMetres = table.Column<double>(type: "double precision", nullable: true),
                    HeightMetres = table.Column<double>(type: "double precision", nullable: true),
                    Minutes = table.Column<double>(type: "double precision", nullable: true),
                    Words = table.Column<string>(type: "character varying(4000)", maxLength: 4000, nullable: false),
                    PhotoId = table.Column<Guid>(type: "uuid", nullable: true),
                    Sent = table.Column<DateTime>(type: "timestamp with time zone", nullable: false),
                    Changed = table.Column<DateTime>(type: "timestamp with time zone", nullable: false),
                    RowVersion = table.Column<int>(type: "integer", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_TesterReports", x => x.Id);
                    table.ForeignKey(
                        name: "FK_TesterReports_Photos_PhotoId",
                        column: x => x.PhotoId,
                        principalTable: "Photos",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_TesterReports_TestRounds_RoundId",
                        column: x => x.RoundId,
                        principalTable: "TestRounds",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                    table.ForeignKey(
                        name: "FK_TesterReports_Testers_TesterId",
                        column: x => x.TesterId,
                        principalTable: "Testers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Remarks",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "uuid", nullable: false),
                    ReportId = table.Column<Guid>(type: "uuid", nullable: false),
                    Row = table.Column<string>(type: "character varying(120)", maxLength: 120, nullable: false),
                    Word = table.Column<string>(type: "character varying(120)", maxLength: 120, nullable: false),
                    Text = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false),
                    PhotoId = table.Column<Guid>(type: "uuid", nullable: true),
                    Sent = table.Column<DateTime>(type: "timestamp with time zone", nullable: false),
                    Answered = table.Column<string>(type: "character varying(20)", maxLength: 20, nullable: false),
                    MendedIn = table.Column<int>(type: "integer", nullable: true),
                    Answer = table.Column<string>(type: "character varying(2000)", maxLength: 2000, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Remarks", x => x.Id);
                    table.ForeignKey(
                        name: "FK_Remarks_Photos_PhotoId",
                        column: x => x.PhotoId,
                        principalTable: "Photos",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_Remarks_TesterReports_ReportId",
                        column: x => x.ReportId,
                        principalTable: "TesterReports",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_CorrectionPages_DesignId",
                table: "CorrectionPages",
                column: "DesignId",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Corrections_DesignId_Version",
                table: "Corrections",
                columns: new[] { "DesignId", "Version" });

            migrationBuilder.CreateIndex(
                name: "IX_DesignTags_TagId",
                table: "DesignTags",
                column: "TagId");

            migrationBuilder.CreateIndex(
                name: "IX_Drafts_AccountId",
                table: "Drafts",
                column: "AccountId");

            migrationBuilder.CreateIndex(
                name: "IX_Remarks_PhotoId",
                table: "Remarks",
                column: "PhotoId");

            migrationBuilder.CreateIndex(
                name: "IX_Remarks_ReportId",
                table: "Remarks",
                column: "ReportId");

            migrationBuilder.CreateIndex(
                name: "IX_ShareLinks_RoundId",
                table: "ShareLinks",
                column: "RoundId");

            migrationBuilder.CreateIndex(
                name: "IX_ShareLinks_TesterId",
                table: "ShareLinks",
                column: "TesterId");

            migrationBuilder.CreateIndex(
                name: "IX_ShareLinks_TokenHash",
                table: "ShareLinks",
                column: "TokenHash",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Tags_StudioId_NameKey",
                table: "Tags",
                columns: new[] { "StudioId", "NameKey" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_TestRounds_DesignId_Version",
                table: "TestRounds",
                columns: new[] { "DesignId", "Version" });

            migrationBuilder.CreateIndex(
                name: "IX_TesterReports_PhotoId",
                table: "TesterReports",
                column: "PhotoId");

            migrationBuilder.CreateIndex(
                name: "IX_TesterReports_RoundId",
                table: "TesterReports",
                column: "RoundId");

            migrationBuilder.CreateIndex(
                name: "IX_TesterReports_TesterId",
                table: "TesterReports",
                column: "TesterId");

            migrationBuilder.CreateIndex(
                name: "IX_Testers_RoundId",
                table: "Testers",
                column: "RoundId");

            migrationBuilder.CreateIndex(
                name: "IX_Designs_StudioId_Deleted_State",
                table: "Designs",
                columns: new[] { "StudioId", "Deleted", "State" });

            migrationBuilder.CreateIndex(
                name: "IX_Designs_StudioId_Deleted_TitleKey_Id",
                table: "Designs",
                columns: new[] { "StudioId", "Deleted", "TitleKey", "Id" });

            migrationBuilder.CreateIndex(
                name: "IX_Designs_StudioId_Deleted_Updated_Id",
                table: "Designs",
                columns: new[] { "StudioId", "Deleted", "Updated", "Id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropIndex(
                name: "IX_Designs_StudioId_Deleted_State",
                table: "Designs");

            migrationBuilder.DropIndex(
                name: "IX_Designs_StudioId_Deleted_TitleKey_Id",
                table: "Designs");

            migrationBuilder.DropIndex(
                name: "IX_Designs_StudioId_Deleted_Updated_Id",
                table: "Designs");

            migrationBuilder.DropTable(
                name: "CorrectionPages");

            migrationBuilder.DropTable(
                name: "Corrections");

            migrationBuilder.DropTable(
                name: "DesignFaces");

            migrationBuilder.DropTable(
                name: "DesignTags");

            migrationBuilder.DropTable(
                name: "Drafts");

            migrationBuilder.DropTable(
                name: "Preferences");

            migrationBuilder.DropTable(
                name: "Remarks");

            migrationBuilder.DropTable(
                name: "ShareLinks");

            migrationBuilder.DropTable(
                name: "Tags");

            migrationBuilder.DropTable(
                name: "TesterReports");

            migrationBuilder.DropTable(
                name: "Testers");

            migrationBuilder.DropTable(
                name: "TestRounds");

            migrationBuilder.DropColumn(
                name: "Name",
                table: "Versions");

            migrationBuilder.CreateIndex(
                name: "IX_Designs_StudioId_Updated",
                table: "Designs",
                columns: new[] { "StudioId", "Updated" });
        }
    }
}
